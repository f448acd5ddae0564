import type { SolvedWall } from "../../solver/index.js";
import { badgeBox } from "../badge.js";
import { boxRound } from "../labels.js";
import { boundsOfPoints } from "../picture.js";
import type { PictureBox, WallScene } from "../scene.js";
import type { FindingGroup } from "./finding-groups.js";
import { wallHeadings } from "./headings.js";
import { wallMargins } from "./margins.js";
import { findingMarks } from "./marks.js";
import { holeRoom, holeScenes, namedThings, openingScenes } from "./openings.js";
import { setLines } from "./set-lines.js";
import type { Setting } from "./setting.js";
import { surfaceScene } from "./surface-scene.js";
import { trimScenes } from "./trims.js";
import { placeInner } from "./wall-labels.js";

/**
 * One wall, not yet placed: everything is told from its left substrate and level line. Room is kept
 * for `headingLines` lines over it.
 */
export function wallScene(
  solved: SolvedWall,
  groups: readonly FindingGroup[],
  headingLines: number,
  setting: Setting,
): Omit<WallScene, "at"> {
  const surface = surfaceScene(solved, setting);
  const bounds = boundsOfPoints(surface.bare);
  const { marks, wishes } = findingMarks(solved, groups);
  const inner = placeInner(namedThings(solved, setting), wishes, bounds, setting.em);
  const margins = wallMargins(solved, bounds, inner.unplaced, setting);
  const openings = openingScenes(solved);
  const drawn = [
    bounds,
    ...openings.map((opening) => opening.box),
    ...margins.labels.map((l) => l.box),
  ];
  const headings = wallHeadings(solved, boxRound(drawn)!, headingLines, setting);
  return {
    ...surface,
    trims: trimScenes(solved.trims),
    openings,
    holes: holeScenes(solved),
    lines: [...margins.lines, ...setLines(solved), ...inner.leaders],
    dimensions: margins.dimensions,
    marks,
    badges: inner.badges,
    labels: [...headings, ...margins.labels, ...inner.labels],
  };
}

/** Round a wall and all that stands round it, in ems; the plan's title stands in line with it. */
export const WALL_PAD = 0.4;

/** The room that a wall takes with all that stands round it. */
export function roomOf(scene: Omit<WallScene, "at">, em: number): PictureBox {
  const boxes = [
    boundsOfPoints(scene.bare),
    ...scene.labels.map((label) => label.box),
    ...scene.badges.map(badgeBox),
    ...scene.openings.map((opening) => opening.box),
    ...scene.holes.map(holeRoom),
    ...[...scene.lines.map((l) => l.points), ...scene.dimensions.map((d) => d.extensions)]
      .filter((points) => points.length > 0)
      .map(boundsOfPoints),
  ];
  const room = boxRound(boxes)!;
  const pad = WALL_PAD * em;
  return {
    left: room.left - pad,
    top: room.top - pad,
    right: room.right + pad,
    bottom: room.bottom + pad,
  };
}
