import type { SolvedPlan, SolvedWall } from "../../solver/index.js";
import { boxesOverlap, boxRound, lineHeight, makeLabel } from "../labels.js";
import { boundsOfPoints, rounded } from "../picture.js";
import { plainText } from "../plain-text.js";
import type { Label, PictureBox, RuledLine, Scene, WallScene } from "../scene.js";
import { preferred } from "../scene/arrangement.js";
import { type Setting, settingOf } from "../scene/setting.js";
import { wallScene } from "../scene/wall-scene.js";
import { wallTitle } from "../scene/words.js";
import { fitText, wrapText } from "../text-metrics.js";
import { cornerLines } from "./corner-words.js";
import { closes, roomOrder } from "./room-order.js";

/** Text can be read on a picture that is no more than this many ems wide. */
const EMS_ACROSS = 130;
/** Between two walls at a corner, and between walls that aren't joined, in ems. */
const AT_CORNER = 1.2;
const APART = 6;
/** A corner's words are no wider than this. */
const CORNER_ROOM = 15;
const MARGIN = 1.6;
const CAPTION = 0.85;

/**
 * The walls unfolded: those that corners join side by side in their order round the room, on one level line, with
 * each corner's kind, lap and joint under it. Pieces, openings and trims are as in the plan's picture; dimensions
 * and findings are not told again.
 */
export function buildRoomScene(solved: SolvedPlan): Scene {
  const groups = roomOrder(solved.walls);
  const setting = { ...settingOf(solved.plan), em: emFor(solved.walls) };
  const walls: WallScene[] = [];
  const corners: Label[] = [];
  let x = 0;
  for (const group of groups) {
    const isRing = closes(group);
    const half = (AT_CORNER / 2) * setting.em;
    for (const [i, each] of group.entries()) {
      const { left, right } = boundsOfPoints(bareScene(each, setting).bare);
      const at = { x: rounded(x - left), y: 0 };
      const end = at.x + right;
      const next = group[i + 1] ?? (isRing ? group[0]! : null);
      const isJoined = i + 1 < group.length;
      x = end + (isJoined ? AT_CORNER : APART) * setting.em;
      const folds = {
        left: isRing && i === 0 ? left - half : null,
        right: next ? right + half : null,
      };
      walls.push(placed(each, at, folds, setting));
      const add = (words: readonly string[], place: number) =>
        addCorner(corners, words, at.x + place, bottomOf(walls), setting.em);
      if (folds.left !== null) add(roundWords(group.at(-1)!), folds.left);
      if (next) {
        const words = cornerLines(each, next, setting);
        add(isJoined ? words : [...roundWords(next), ...words], right + half);
      }
    }
  }
  return sceneOf(solved, walls, corners, setting);
}

/** At both ends of walls that go all the way round: with which wall the one there meets. */
function roundWords({ wall }: SolvedWall): string[] {
  return [`meets ${wallTitle(wall)}`];
}

function emFor(walls: readonly SolvedWall[]): number {
  const across = walls.reduce((sum, { wall }) => sum + wall.size.across / 1e6, 0);
  return preferred(across / Math.max(30, EMS_ACROSS - APART * walls.length));
}

/** A wall without what stands round it. */
function bareScene(solved: SolvedWall, setting: Setting): Omit<WallScene, "at"> {
  const whole = wallScene(solved, [], 0, setting);
  const labels = whole.labels.filter(({ role }) => role === "name");
  return { ...whole, lines: [], dimensions: [], badges: [], marks: [], labels };
}

function placed(
  solved: SolvedWall,
  at: WallScene["at"],
  folds: { readonly left: number | null; readonly right: number | null },
  setting: Setting,
): WallScene {
  const { em } = setting;
  const scene = bareScene(solved, setting);
  const box = boundsOfPoints(scene.bare);
  const title = makeLabel({
    text: fitText(scene.title, box.right - box.left, 1.2 * em, "bold"),
    role: "heading",
    x: box.left,
    y: box.top - 1.2 * em,
    size: 1.2 * em,
    anchor: "start",
    bold: true,
  });
  const level: RuledLine = {
    kind: "level",
    points: [folds.left ?? box.left, 0, folds.right ?? box.right, 0].map(rounded),
  };
  const fold = [folds.left, folds.right].flatMap((x): RuledLine[] => {
    if (x === null) return [];
    return [
      { kind: "centre", points: [x, box.top - 0.8 * em, x, box.bottom + 0.8 * em].map(rounded) },
    ];
  });
  return { ...scene, at, lines: [level, ...fold], labels: [...scene.labels, title] };
}

function bottomOf(walls: readonly WallScene[]): number {
  return Math.max(...walls.map(({ bare, at }) => at.y + boundsOfPoints(bare).bottom));
}

/** A corner's words under it, as far down as they are clear of those beside them. */
function addCorner(
  labels: Label[],
  words: readonly string[],
  x: number,
  bottom: number,
  em: number,
): void {
  const size = CAPTION * em;
  const lines = words.flatMap((line) => wrapText(line, CORNER_ROOM * em, size, 2));
  const from = (y: number) =>
    lines.map((text, i) =>
      makeLabel({ text, role: "caption", x, y: y + i * lineHeight(size), size }),
    );
  let y = bottom + 2 * em;
  let own = from(y);
  while (own.some(({ box }) => labels.some((other) => boxesOverlap(box, other.box)))) {
    y += lineHeight(size);
    own = from(y);
  }
  labels.push(...own);
}

function sceneOf(
  solved: SolvedPlan,
  walls: readonly WallScene[],
  corners: readonly Label[],
  { em }: Setting,
): Scene {
  const boxes: PictureBox[] = walls.flatMap(({ at, bare, labels, openings }) =>
    [boundsOfPoints(bare), ...labels.map(({ box }) => box), ...openings.map(({ box }) => box)].map(
      (box) => ({
        left: box.left + at.x,
        right: box.right + at.x,
        top: box.top + at.y,
        bottom: box.bottom + at.y,
      }),
    ),
  );
  const drawn = boxRound([...boxes, ...corners.map(({ box }) => box)]) ?? {
    left: 0,
    top: 0,
    right: 30 * em,
    bottom: 0,
  };
  const name = plainText(solved.plan.title) || "Tile plan";
  const title = makeLabel({
    text: fitText(
      `${name}: the room unfolded`,
      Math.max(drawn.right - drawn.left, 30 * em),
      1.9 * em,
      "bold",
    ),
    role: "title",
    x: drawn.left,
    y: drawn.top - 2 * em,
    size: 1.9 * em,
    anchor: "start",
    bold: true,
  });
  const all = boxRound([drawn, title.box])!;
  const by = MARGIN * em;
  return {
    title: `${name}: the room unfolded`,
    description: walls.map((wall) => `${wall.title}: ${wall.description}`).join(" "),
    view: {
      left: rounded(all.left - by),
      top: rounded(all.top - by),
      right: rounded(all.right + by),
      bottom: rounded(all.bottom + by),
    },
    em,
    walls,
    labels: [title, ...corners],
    swatches: [],
    badges: [],
  };
}
