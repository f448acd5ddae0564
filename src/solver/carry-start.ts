import { type Chosen } from "./choose/index.js";
import type { Nm } from "../measure/index.js";
import type { CarriedStart, Lay, Plan, UpStart, Wall } from "../model/index.js";
import { courseEnd, endLine } from "./course-end.js";
import { firstPast, moduleUp } from "./lattice.js";
import { besideMost } from "./corner-lays.js";
import { layRegion, type LayPlot } from "./lay-region.js";
import { cornerGap } from "./region.js";
import type { Lattice, Region, SolvedLay, SolvedWall } from "./solved.js";
import { type Ground, type SettledLay, upOrigin } from "./start.js";

/**
 * A lay whose start is settled: one that goes on from another wall gets its place from that wall, which is
 * solved already; of several lays there, from the one that stands beside most of it. Where it leaves its courses open, they run on as well, if the tile is as high. Without tile
 * on the other wall there is nothing to go on from, and the solver chooses.
 */
export function settleLay(
  plot: LayPlot,
  solved: ReadonlyMap<string, SolvedWall>,
  joint: Nm = plot.lay.joint.min,
): SettledLay {
  const { plan, wall, lay } = plot;
  const { across } = lay;
  if (!across || !("wall" in across)) return { ...lay, across };
  const other = solved.get(across.wall);
  if (!other) return { ...lay, across: null };
  const region = layRegion(plot, joint);
  const side = across.corner === "left" ? "right" : "left";
  const from = besideMost(region.bounds, { wall: other, side });
  if (!from) return { ...lay, across: null };
  const up = lay.up ?? carriedUp(lay, from);
  const course = courseAt(wall, region, lay, joint, up, from);
  const x = carriedOrigin(plan, { wall, region, lay, joint }, across, course, {
    wall: other.wall,
    region: other.region,
    lattice: from.lattice,
  });
  return { ...lay, up, across: { ...across, x } };
}

/** A course of a wall, and the number of the other wall's course that it goes on from. */
export interface CoursePair {
  readonly bottom: Nm;
  readonly other: number;
}

/** A wall as it is laid, which another goes on from. */
export interface LaidEnd {
  readonly wall: Wall;
  readonly region: Region;
  readonly lattice: Lattice;
}

/** The left edge of the tile with which a course goes on from another wall's. */
function carriedOrigin(
  plan: Plan,
  { wall, region, lay, joint }: Ground,
  across: CarriedStart,
  course: CoursePair,
  from: LaidEnd,
): Nm {
  const side = across.corner === "left" ? "right" : "left";
  const { shown } = courseEnd(from.region, from.lattice, side, course.other);
  const gap = cornerGap(
    plan,
    { edge: wall.edges[across.corner], joint },
    { edge: from.wall.edges[side], joint: from.lattice.joint },
  );
  const line = endLine(region, across.corner, course.bottom, course.bottom + lay.tile.face.up);
  return originBehind({ lay, joint }, across, { line, shown, gap });
}

/** Where a course ends at a corner, what is seen of the other wall's last tile there, and what stands between them; nm. */
export interface CornerCourse {
  readonly line: Nm;
  readonly shown: Nm;
  readonly gap: Nm;
}

/** The left edge of the tile with which a course goes on behind a corner. */
export function originBehind(
  { lay, joint }: Pick<Ground, "lay" | "joint">,
  across: CarriedStart,
  { line, shown, gap }: CornerCourse,
): Nm {
  const width = firstWidth(across, lay, joint, shown, gap);
  return across.corner === "left" ? line + width - lay.tile.face.across : line - width;
}

/**
 * What was chosen for a lay, with a start that goes on from another wall where it comes to be beside the joint
 * and the courses that were chosen.
 */
export function carryOn(
  plot: LayPlot,
  chosen: Chosen,
  solved: ReadonlyMap<string, SolvedWall>,
): Chosen {
  const { lay } = plot;
  if (!lay.across || !("wall" in lay.across)) return chosen;
  const { across } = settleLay({ ...plot, lay: { ...lay, up: chosen.up } }, solved, chosen.joint);
  if (!across) return chosen;
  const { choice } = chosen;
  return {
    ...chosen,
    across,
    choice: choice && { ...choice, chosen: { ...choice.chosen, across } },
  };
}

/** The other wall's line of courses, where courses as high as its own can go on. */
function carriedUp({ tile }: Lay, { lattice, up }: SolvedLay): UpStart | null {
  if (tile.face.up !== lattice.face.up) return null;
  if (up.kind === "joint") return up;
  const { y, joint } = lattice;
  return { kind: "joint", y: y - joint + Math.floor(joint / 2) };
}

/** Course 1, and the number of the other wall's course that is nearest to its height. */
function courseAt(
  wall: Wall,
  region: Region,
  lay: Lay,
  joint: Nm,
  up: UpStart | null,
  { lattice }: SolvedLay,
): CoursePair {
  if (!up) return { bottom: region.bounds.bottom, other: 1 };
  const y = upOrigin({ wall, region, lay, joint }, up);
  const face = lay.tile.face.up;
  const module = face + joint;
  const bottom = y + firstPast(y, face, module, region.bounds.bottom) * module;
  return { bottom, other: Math.round((bottom - lattice.y) / moduleUp(lattice)) + 1 };
}

/** How far course 1's first tile reaches from the corner. */
function firstWidth(
  across: CarriedStart,
  { tile }: Ground["lay"],
  joint: Nm,
  shown: Nm,
  gap: Nm,
): Nm {
  const face = tile.face.across;
  if (across.kind === "mirrored") return shown;
  if (across.joint === "added") return restOf(face, shown);
  const rest = face - shown - gap;
  // The gap takes the rest of the tile: the next one stands behind the gap.
  return rest > 0 ? rest : rest + joint + face;
}

/** What is left of the tile; behind a whole one the next begins. */
export function restOf(face: Nm, width: Nm): Nm {
  return width < face ? face - width : face;
}

/** What is seen of the tile behind a gap; where the gap takes the rest of it, of the next one. */
export function restBehind(face: Nm, joint: Nm, shown: Nm, gap: Nm): Nm {
  const rest = face - shown - gap;
  return rest > 0 ? rest : Math.min(face, face + rest + joint);
}
