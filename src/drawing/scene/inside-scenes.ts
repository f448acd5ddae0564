import { faceWords, type InsideFace } from "../../model/index.js";
import type { SolvedInside, SolvedWall } from "../../solver/index.js";
import { badgeBox } from "../badge.js";
import { boxRound, lineHeight, makeLabel, movedLabel } from "../labels.js";
import { boundsOfPoints, rounded } from "../picture.js";
import { plainText } from "../plain-text.js";
import type { Label, PictureBox, Place, WallScene } from "../scene.js";
import { textWidth } from "../text-metrics.js";
import type { FindingGroup } from "./finding-groups.js";
import { findingMarks } from "./marks.js";
import type { Setting } from "./setting.js";
import { surfaceScene } from "./surface-scene.js";
import { placeInner } from "./wall-labels.js";
import { wallTitle } from "./words.js";

/** The surfaces inside one opening, folded out; the first has the heading over all of them. */
export interface InsideNet {
  readonly faces: readonly WallScene[];
  /** The room that they take. */
  readonly room: PictureBox;
}

const CAPTION_SIZE = 0.9;
const HEADING_SIZE = 1.1;
/** Between two surfaces, and between a surface and its caption, in ems. */
const GAP = 1;
const CAPTION_GAP = 0.5;

/** A surface not yet placed: its picture, and how wide its words are. */
interface Face {
  readonly face: InsideFace;
  readonly scene: Omit<WallScene, "at">;
  readonly bounds: PictureBox;
  readonly words: readonly string[];
}

/** The surfaces of a wall's openings: a net for each opening that has any, in their order. */
export function insideNets(
  solved: SolvedWall,
  groups: readonly FindingGroup[],
  isAlone: boolean,
  setting: Setting,
): InsideNet[] {
  const openings = [...new Set(solved.insides.map(({ opening }) => opening))];
  return openings.map((opening) => {
    const faces = solved.insides
      .filter((each) => each.opening === opening)
      .map((each) => faceScene(each, groups, setting));
    const whose = isAlone ? "" : `${wallTitle(solved.wall)}: `;
    return netOf(faces, `${whose}${opening.kind} ${plainText(opening.name)}, folded out`, setting);
  });
}

function faceScene(solved: SolvedInside, groups: readonly FindingGroup[], setting: Setting): Face {
  const { wall, face } = solved;
  const surface = surfaceScene(solved, setting);
  const bounds = boundsOfPoints(surface.bare);
  const { marks, wishes } = findingMarks(
    solved,
    groups.filter((group) => group.wall === wall.name),
  );
  const { badges, leaders } = placeInner([], wishes, bounds, setting.em);
  const { across, up } = wall.size;
  return {
    face,
    bounds,
    words: [faceWords(face), `${setting.length(across)} × ${setting.length(up)}`],
    scene: {
      ...surface,
      trims: [],
      openings: [],
      holes: [],
      lines: leaders,
      dimensions: [],
      marks,
      badges,
      labels: [],
    },
  };
}

/** The head over the back, the sill under it, the sides beside it; each with its caption, the net with a heading. */
function netOf(faces: readonly Face[], heading: string, { em }: Setting): InsideNet {
  const size = CAPTION_SIZE * em;
  const caption = 2 * lineHeight(size) + CAPTION_GAP * em;
  const find = (name: InsideFace) => faces.find(({ face }) => face === name);
  const [head, sill, back] = [find("head"), find("sill"), find("back")];
  const [left, right] = [find("left"), find("right")];
  const wide = (face: Face | undefined): number =>
    face === undefined
      ? 0
      : Math.max(widthOf(face), ...face.words.map((words) => textWidth(words, size)));
  const high = (face: Face | undefined): number => (face ? heightOf(face) : 0);
  const middle = Math.max(wide(head), wide(sill), wide(back));
  const top = HEADING_SIZE * em * 1.8;
  const level =
    top + caption + high(head) + GAP * em + Math.max(high(left), high(right), high(back));
  const columns = {
    left: wide(left) / 2,
    middle: wide(left) + GAP * em + middle / 2,
    right: wide(left) + middle + 2 * GAP * em + wide(right) / 2,
  };
  const under = level + caption + GAP * em;
  const placed = [
    ...(head ? [placedFace(head, columns.middle, top + caption + high(head), "over", em)] : []),
    ...(left ? [placedFace(left, columns.left, level, "under", em)] : []),
    ...(back ? [placedFace(back, columns.middle, level, "under", em)] : []),
    ...(right ? [placedFace(right, columns.right, level, "under", em)] : []),
    ...(sill ? [placedFace(sill, columns.middle, under + high(sill), "under", em)] : []),
  ];
  const title = makeLabel({
    text: heading,
    role: "heading",
    x: 0,
    y: HEADING_SIZE * em,
    size: HEADING_SIZE * em,
    anchor: "start",
    bold: true,
  });
  const [first, ...others] = placed;
  const scenes = first ? [withLabel(first, title), ...others] : [];
  return { faces: scenes, room: boxRound([title.box, ...scenes.map(faceRoom)])! };
}

function widthOf({ bounds }: Face): number {
  return bounds.right - bounds.left;
}

function heightOf({ bounds }: Face): number {
  return bounds.bottom - bounds.top;
}

/** A surface with the middle of its width and its foot at a place, its caption over or under it. */
function placedFace(
  { scene, bounds, words }: Face,
  middle: number,
  foot: number,
  caption: "over" | "under",
  em: number,
): WallScene {
  const size = CAPTION_SIZE * em;
  const at: Place = {
    x: rounded(middle - (bounds.left + bounds.right) / 2),
    y: rounded(foot - bounds.bottom),
  };
  const step = lineHeight(size);
  const first =
    caption === "under"
      ? bounds.bottom + CAPTION_GAP * em + step / 2
      : bounds.top - CAPTION_GAP * em - step * (words.length - 0.5);
  const labels = words.map((text, i) =>
    makeLabel({
      text,
      role: i === 0 ? "name" : "dimension",
      x: (bounds.left + bounds.right) / 2,
      y: first + i * step,
      size,
    }),
  );
  return { ...scene, at, labels };
}

/** The same surface with one more label, whose place is told from the net's corner. */
function withLabel(scene: WallScene, label: Label): WallScene {
  const { x, y } = scene.at;
  return { ...scene, labels: [...scene.labels, movedLabel(label, -x, -y)] };
}

function faceRoom({ at, bare, labels, badges }: WallScene): PictureBox {
  const boxes = [boundsOfPoints(bare), ...labels.map(({ box }) => box), ...badges.map(badgeBox)];
  return shifted(boxRound(boxes)!, at.x, at.y);
}

function shifted({ left, top, right, bottom }: PictureBox, dx: number, dy: number): PictureBox {
  return {
    left: rounded(left + dx),
    top: rounded(top + dy),
    right: rounded(right + dx),
    bottom: rounded(bottom + dy),
  };
}
