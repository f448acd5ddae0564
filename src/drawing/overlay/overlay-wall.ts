import { pieceShape, type SolvedLay, type SolvedWall } from "../../solver/index.js";
import { boxRound, lineHeight, makeLabel } from "../labels.js";
import { boundsOfPoints, boxRing, pictureRing } from "../picture.js";
import { plainText } from "../plain-text.js";
import type { Fate, Label, PictureBox, Points, WallScene } from "../scene.js";
import { bareOutline, groundBands, hiddenStrips } from "../scene/ground.js";
import { holeScenes, namedThings, openingScenes } from "../scene/openings.js";
import { coursesBefore } from "../scene/main-lay.js";
import type { Setting } from "../scene/setting.js";
import { trimScenes } from "../scene/trims.js";
import { placeInner } from "../scene/wall-labels.js";
import { wallTitle } from "../scene/words.js";
import { fitText, wrapText } from "../text-metrics.js";
import type { ComparedWall, FateGroup, LayFates, OverlayWall } from "./overlay-scene.js";

const HEADING_SIZE = 1.35;
const NOTE_SIZE = 0.9;
/** A heading may be this wide over a narrow wall, in ems. */
const HEADING_ROOM = 31;

const FATES: readonly (Fate | null)[] = [null, "moved", "recut", "fresh", "gone"];

/** One wall of an overlay, not yet placed. */
export function overlayWall(compared: ComparedWall, setting: Setting): OverlayWall {
  const { before, after, fates, notes } = compared;
  const shown = (after ?? before)!;
  return {
    base: baseScene(shown, notes, setting),
    groups: [
      ...(after ? fateGroups(after, fates.after) : []),
      ...(before ? fateGroups(before, fates.before).filter(({ fate }) => fate === "gone") : []),
    ].sort((a, b) => FATES.indexOf(a.fate) - FATES.indexOf(b.fate)),
    was: before && after ? whatWas(before, after, fates.before) : NOTHING,
  };
}

const NOTHING: OverlayWall["was"] = { bare: null, pieces: [], openings: [], holes: [] };

/** The wall as its own picture has it, but for pieces, dimensions and findings. */
function baseScene(shown: SolvedWall, notes: readonly string[], setting: Setting): WallScene {
  const { em } = setting;
  const bare = bareOutline(shown);
  const bounds = boundsOfPoints(bare);
  const inner = placeInner(namedThings(shown, setting), [], bounds, em);
  const openings = openingScenes(shown);
  const drawn = boxRound([bounds, ...openings.map(({ box }) => box)])!;
  return {
    name: shown.wall.name,
    title: wallTitle(shown.wall),
    description: `${notes.map(plainText).join("; ")}.`,
    at: { x: 0, y: 0 },
    bare,
    bands: groundBands(shown),
    pieces: [],
    trims: trimScenes(shown.trims),
    openings,
    holes: holeScenes(shown),
    hidden: hiddenStrips(shown),
    lines: inner.leaders,
    dimensions: [],
    marks: [],
    badges: [],
    labels: [...headings(shown, notes, drawn, setting), ...inner.labels],
  };
}

function headings(
  { wall }: SolvedWall,
  notes: readonly string[],
  drawn: PictureBox,
  { em }: Setting,
): Label[] {
  const size = NOTE_SIZE * em;
  const room = Math.max(drawn.right - drawn.left, HEADING_ROOM * em);
  const lines = notes.flatMap((note) => wrapText(plainText(note), room, size, 3));
  const first = drawn.top - 0.9 * em - lineHeight(size) * (lines.length - 0.5);
  const start = { x: drawn.left, anchor: "start" } as const;
  const heading = makeLabel({
    ...start,
    text: fitText(wallTitle(wall), room, HEADING_SIZE * em, "bold"),
    role: "heading",
    y: first - 1.75 * em,
    size: HEADING_SIZE * em,
    bold: true,
  });
  const told = lines.map((text, i) =>
    makeLabel({ ...start, text, role: "note", y: first + i * lineHeight(size), size }),
  );
  return [heading, ...told];
}

function fateGroups(wall: SolvedWall, fates: LayFates): FateGroup[] {
  return wall.lays.flatMap((lay) => layGroups(lay, coursesBefore(wall, lay), fates.get(lay) ?? []));
}

function layGroups(lay: SolvedLay, earlier: number, fates: readonly (Fate | null)[]): FateGroup[] {
  const groups = new Map<
    string,
    { fate: Fate | null; course: number; shapes: (readonly Points[])[] }
  >();
  for (let i = 0; i < lay.pieces.count; i++) {
    const fate = fates[i] ?? null;
    const course = earlier + lay.pieces.course[i]!;
    const key = `${fate} ${course}`;
    const group = groups.get(key) ?? { fate, course, shapes: [] };
    groups.set(key, group);
    group.shapes.push(ringsOf(lay, i));
  }
  return [...groups.values()];
}

function ringsOf({ pieces }: SolvedLay, i: number): readonly Points[] {
  const { outline, holes } = pieceShape(pieces, i);
  return [outline, ...holes].map(pictureRing);
}

/** Where recut pieces, openings, holes and the bare wall itself were. */
function whatWas(before: SolvedWall, after: SolvedWall, fates: LayFates): OverlayWall["was"] {
  const [old, now] = [bareOutline(before), bareOutline(after)];
  const recut = before.lays.flatMap((lay) =>
    (fates.get(lay) ?? []).flatMap((fate, i) => (fate === "recut" ? ringsOf(lay, i) : [])),
  );
  const unlike = <T>(list: readonly T[], other: readonly T[]): T[] => {
    const there = new Set(other.map((each) => JSON.stringify(each)));
    return list.filter((each) => !there.has(JSON.stringify(each)));
  };
  const place = (wall: SolvedWall) => openingScenes(wall).map(({ box }) => boxRing(box));
  const round = (wall: SolvedWall) => holeScenes(wall).map((hole) => ({ ...hole, name: "" }));
  return {
    bare: JSON.stringify(old) === JSON.stringify(now) ? null : old,
    pieces: recut,
    openings: unlike(place(before), place(after)),
    holes: unlike(round(before), round(after)),
  };
}
