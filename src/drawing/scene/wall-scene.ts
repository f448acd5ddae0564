import type { SolvedWall } from "../../solver/index.js";
import { badgeBox } from "../badge.js";
import { boxRound, lineHeight, makeLabel } from "../labels.js";
import type { Label, PictureBox, Points, WallScene } from "../scene.js";
import { fitText, wrapText } from "../text-metrics.js";
import type { FindingGroup } from "./finding-groups.js";
import { bareOutline, groundBands, hiddenStrips } from "./ground.js";
import { wallMargins } from "./margins.js";
import { findingMarks } from "./marks.js";
import { holeScenes, namedThings, openingScenes } from "./openings.js";
import { pieceGroups } from "./pieces.js";
import type { Setting } from "./setting.js";
import { trimScenes } from "./trims.js";
import { placeInner } from "./wall-labels.js";
import { layWords, wallSentence, wallTitle } from "./words.js";

const HEADING_SIZE = 1.35;
const NOTE_SIZE = 0.9;
/** A heading may be this wide over a narrow wall. */
const HEADING_ROOM = 30;

/** One wall, not yet placed: everything is told from its left substrate and level line. */
export function wallScene(
  solved: SolvedWall,
  groups: readonly FindingGroup[],
  setting: Setting,
): Omit<WallScene, "at"> {
  const { wall } = solved;
  const bare = bareOutline(solved);
  const bounds = boundsOfPoints(bare);
  const { marks, wishes } = findingMarks(solved, groups);
  const inner = placeInner(namedThings(solved, setting), wishes, bounds, setting.em);
  const margins = wallMargins(solved, bounds, inner.unplaced, setting);
  const openings = openingScenes(solved);
  const drawn = [
    bounds,
    ...openings.map((opening) => opening.box),
    ...margins.labels.map((l) => l.box),
  ];
  const headings = wallHeadings(solved, boxRound(drawn)!, bounds, setting);
  return {
    name: wall.name,
    title: wallTitle(wall),
    description: wallSentence(solved, setting),
    bare,
    bands: groundBands(solved),
    pieces: pieceGroups(solved, setting.plan.limits),
    trims: trimScenes(solved.trims),
    openings,
    holes: holeScenes(solved),
    hidden: hiddenStrips(solved),
    lines: [...margins.lines, ...inner.leaders],
    dimensions: margins.dimensions,
    marks,
    badges: inner.badges,
    labels: [...headings, ...margins.labels, ...inner.labels],
  };
}

/** The room that a wall takes with all that stands round it. */
export function roomOf(scene: Omit<WallScene, "at">, em: number): PictureBox {
  const boxes = [
    boundsOfPoints(scene.bare),
    ...scene.labels.map((label) => label.box),
    ...scene.badges.map(badgeBox),
    ...scene.openings.map((opening) => opening.box),
    ...scene.holes.map(({ middle, radius }) => ({
      left: middle.x - radius,
      right: middle.x + radius,
      top: middle.y - radius,
      bottom: middle.y + radius,
    })),
    ...[...scene.lines.map((l) => l.points), ...scene.dimensions.map((d) => d.extensions)]
      .filter((points) => points.length > 0)
      .map(boundsOfPoints),
  ];
  const room = boxRound(boxes)!;
  const pad = 0.4 * em;
  return {
    left: room.left - pad,
    top: room.top - pad,
    right: room.right + pad,
    bottom: room.bottom + pad,
  };
}

/** The wall's title and what it is laid with, over all that stands above the wall. */
function wallHeadings(
  solved: SolvedWall,
  drawn: PictureBox,
  bare: PictureBox,
  setting: Setting,
): Label[] {
  const { em } = setting;
  const room = Math.max(bare.right - bare.left, HEADING_ROOM * em);
  const size = NOTE_SIZE * em;
  const notes = layWords(solved, setting).flatMap((line) => wrapText(line, room, size, 3));
  const at = { x: bare.left, anchor: "start" } as const;
  let y = drawn.top - 0.9 * em - lineHeight(size) * (notes.length - 0.5);
  const heading = makeLabel({
    ...at,
    text: fitText(wallTitle(solved.wall), room, HEADING_SIZE * em, "bold"),
    role: "heading",
    y: y - 1.75 * em,
    size: HEADING_SIZE * em,
    bold: true,
  });
  const labels = [heading];
  for (const text of notes) {
    labels.push(makeLabel({ ...at, text, role: "note", y, size }));
    y += lineHeight(size);
  }
  return labels;
}

function boundsOfPoints(points: Points): PictureBox {
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  for (let i = 0; i < points.length; i += 2) {
    left = Math.min(left, points[i]!);
    right = Math.max(right, points[i]!);
    top = Math.min(top, points[i + 1]!);
    bottom = Math.max(bottom, points[i + 1]!);
  }
  return { left, top, right, bottom };
}
