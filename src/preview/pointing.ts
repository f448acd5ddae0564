import {
  boundsOfPoints,
  type PictureBox,
  type Place,
  type Points,
  type Scene,
  type WallScene,
} from "../drawing/index.js";
import type { Picture, PictureFinding, SpotQuestion, SpotReading } from "../service/index.js";
import { shifted } from "./box-to-fit.js";
import { findSpot, type Spot } from "./find-spot.js";
import {
  indexPieces,
  isInside,
  pieceAt,
  pieceRings,
  placeInside,
  type PieceIndex,
} from "./piece-index.js";
import { walk, type Step } from "./piece-walk.js";
import { SpotAsker } from "./spot-asker.js";

/** What pointing shows and says; a page, or a test. */
export interface PointingEnds {
  readonly ask: (id: number, question: SpotQuestion) => void;
  readonly select: (reading: SpotReading) => void;
  readonly selectFinding: (finding: PictureFinding) => void;
  /** Marks what the pointer is on (`hover`) or what the keys walk over (`piece`). */
  readonly mark: (name: "hover" | "piece", at: Place, rings: readonly Points[]) => void;
  readonly unmark: (name: "hover" | "piece") => void;
  readonly showReading: (reading: SpotReading | null) => void;
  readonly showFinding: (finding: PictureFinding) => void;
  readonly speak: (reading: SpotReading) => void;
}

interface Subject {
  readonly key: string;
  readonly wall: WallScene;
  readonly by: "hover" | "piece";
}

interface Walk {
  readonly wall: string;
  readonly piece: number;
  /** Where the piece is, to find it again in the next picture. */
  readonly at: Place;
}

/** What the pointer or the keys are on: marked at once, then told as soon as the answer comes. */
export class Pointing {
  #picture: Picture | null = null;
  #findings: readonly PictureFinding[] = [];
  #indexes = new WeakMap<WallScene, PieceIndex>();
  #subject: Subject | null = null;
  #reading: SpotReading | null = null;
  #selectWhenRead = false;
  #pointer: Place | null = null;
  #walk: Walk | null = null;
  readonly #asker: SpotAsker<Subject>;

  constructor(private readonly ends: PointingEnds) {
    this.#asker = new SpotAsker(ends.ask, (subject, reading) => this.#told(subject, reading));
  }

  /** Another picture is drawn, or none: what is pointed at is looked for again. */
  drawn(picture: Picture | null, findings: readonly PictureFinding[]): void {
    this.#findings = findings;
    if (picture === this.#picture) return;
    this.#picture = picture;
    this.#asker.forget();
    this.#leave();
    if (this.#walk) this.#walkAgain(this.#walk);
    else if (this.#pointer) this.pointAt(this.#pointer);
  }

  get walking(): boolean {
    return this.#walk !== null;
  }

  answer(id: number, reading: SpotReading | null): void {
    this.#asker.answer(id, reading);
  }

  /** The pointer is at a place of the picture; null when it left. */
  pointAt(place: Place | null): void {
    this.#pointer = place;
    if (this.#walk) return;
    const spot = place && this.#spotAt(place);
    if (!spot) this.#leave();
    else if (this.#picture!.simplified && spot.piece !== null) this.#pointInRun(spot, spot.wall!);
    else if (spot.badge !== null) this.#pointAtBadge(spot, spot.badge);
    else if (spot.key !== this.#subject?.key) this.#turnTo(spot, spot.wall!, "hover");
  }

  /** Pressed at a place of the picture: goes to what made it. */
  tap(place: Place): void {
    this.stopWalking();
    this.pointAt(place);
    const badge = this.#spotAt(place)?.badge;
    const finding = badge ? this.#findingOf(badge) : null;
    if (finding) this.ends.selectFinding(finding);
    else this.select();
  }

  /** Goes to what made the thing that is pointed at, at once or when the answer comes. */
  select(): void {
    if (this.#reading) this.ends.select(this.#reading);
    else this.#selectWhenRead = this.#subject !== null;
  }

  /** Begins to walk from piece to piece, at the piece at a place or at the wall's first. */
  startWalking(wall: WallScene, place: Place): void {
    const index = this.#indexOf(wall);
    if (index.count === 0) return;
    const at = { x: place.x - wall.at.x, y: place.y - wall.at.y };
    this.#walkTo(wall, Math.max(0, pieceAt(index, at)));
  }

  stopWalking(): void {
    if (!this.#walk) return;
    this.#walk = null;
    this.#leave();
  }

  step(step: Step): void {
    const wall = this.#wallOf(this.#walk);
    if (wall) this.#walkTo(wall, walk(this.#indexOf(wall), this.#walk!.piece, step));
  }

  /** Goes on in the next wall that has pieces, or the one before. */
  stepWall(by: -1 | 1): void {
    const walls = this.#scene?.walls ?? [];
    const from = walls.findIndex((wall) => wall.name === this.#walk?.wall);
    for (let i = from + by; from >= 0 && walls[i]; i += by) {
      if (this.#indexOf(walls[i]!).count === 0) continue;
      this.#walkTo(walls[i]!, 0);
      return;
    }
  }

  /** The bounds of the piece that is walked over, in the picture; null when none is. */
  get walkedOver(): PictureBox | null {
    const wall = this.#wallOf(this.#walk);
    if (!wall) return null;
    const [outline] = pieceRings(this.#indexOf(wall), this.#walk!.piece);
    return shifted(boundsOfPoints(outline!), wall.at);
  }

  get #scene(): Scene | null {
    return this.#picture?.scene ?? null;
  }

  #spotAt(place: Place): Spot | null {
    return this.#scene && findSpot(this.#scene, place, (wall) => this.#indexOf(wall));
  }

  #turnTo(spot: Pick<Spot, "key" | "at" | "rings">, wall: WallScene, by: Subject["by"]): void {
    this.#leave();
    this.#subject = { key: spot.key, wall, by };
    if (spot.rings.length > 0) this.ends.mark(by, wall.at, spot.rings);
    const { uri, version } = this.#picture!;
    this.#asker.ask(this.#subject, { uri, version, wall: wall.name, ...spot.at });
  }

  /** In a simplified picture whole tiles are drawn as runs: each place of one is asked for its piece. */
  #pointInRun(spot: Spot, wall: WallScene): void {
    const known = this.#subject?.wall === wall ? this.#reading?.outline : undefined;
    if (known && isInside([known], spot.at.x, spot.at.y)) return;
    const key = `${spot.key} ${spot.at.x} ${spot.at.y}`;
    this.#turnTo({ key, at: spot.at, rings: [] }, wall, "hover");
  }

  #told(subject: Subject, reading: SpotReading | null): void {
    if (subject !== this.#subject) return;
    this.#reading = reading;
    this.ends.showReading(reading);
    if (!reading) return;
    if (reading.outline.length > 0) this.ends.mark(subject.by, subject.wall.at, [reading.outline]);
    if (subject.by === "piece") this.ends.speak(reading);
    if (this.#selectWhenRead) this.ends.select(reading);
    this.#selectWhenRead = false;
  }

  #pointAtBadge({ key, wall, rings }: Spot, number: string): void {
    const finding = this.#findingOf(number);
    this.#leave();
    if (!finding) return;
    this.ends.mark("hover", wall?.at ?? { x: 0, y: 0 }, rings);
    this.ends.showFinding(finding);
    if (wall) this.#subject = { key, wall, by: "hover" };
  }

  #findingOf(number: string): PictureFinding | null {
    return this.#findings.find((finding) => finding.number === number) ?? null;
  }

  #leave(): void {
    this.#subject = null;
    this.#reading = null;
    this.#selectWhenRead = false;
    this.ends.unmark("hover");
    if (!this.#walk) this.ends.unmark("piece");
    this.ends.showReading(null);
  }

  #walkTo(wall: WallScene, piece: number): void {
    const index = this.#indexOf(wall);
    const at = placeInside(index, piece);
    const key = `walk ${wall.name} ${piece}`;
    if (this.#subject?.key === key) return;
    this.#walk = { wall: wall.name, piece, at };
    this.#turnTo({ key, at, rings: pieceRings(index, piece) }, wall, "piece");
  }

  #walkAgain(before: Walk): void {
    const wall = this.#wallOf(before);
    if (!wall) this.stopWalking();
    else this.startWalking(wall, { x: wall.at.x + before.at.x, y: wall.at.y + before.at.y });
  }

  #wallOf(walked: Walk | null): WallScene | null {
    return this.#scene?.walls.find((wall) => wall.name === walked?.wall) ?? null;
  }

  #indexOf(wall: WallScene): PieceIndex {
    let index = this.#indexes.get(wall);
    if (!index) {
      index = indexPieces(wall);
      this.#indexes.set(wall, index);
    }
    return index;
  }
}
