import type { Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import type { Box } from "../box.js";
import { courseShift, moduleAcross, moduleUp } from "../lattice.js";
import type { Course, SolvedLay } from "../solved.js";

type Grid = Pick<SolvedLay, "lattice" | "courses">;

/**
 * How far a side of what an opening takes is from the nearest joint of the lattice; 0 when it falls
 * on one. In a running bond an upright side falls on the joints of some courses only: the nearest
 * beside the opening counts. Infinity where no course is beside it.
 */
export function offJoint(grid: Grid, box: Box, side: Side): Nm {
  const { lattice } = grid;
  if (side === "bottom" || side === "top") {
    const place = box[side] - lattice.y;
    return offEdges(place, lattice.face.up, moduleUp(lattice), side === "bottom");
  }
  const beside = coursesBeside(grid, box).slice(0, lattice.q);
  return Math.min(...beside.map((course) => offHeadJoint(grid, box, side, course)));
}

/** Whether each side of what an opening takes falls on a joint. */
export function isOnJoints(grid: Grid, box: Box): boolean {
  const sides: readonly Side[] = ["bottom", "top", "left", "right"];
  return sides.every((side) => offJoint(grid, box, side) === 0);
}

/** In which of the courses beside an opening both its upright sides fall on joints. */
export interface JointsMet {
  /** Course numbers, from the bottom up. */
  readonly beside: readonly number[];
  readonly met: readonly number[];
}

export function jointsMet(grid: Grid, box: Box): JointsMet {
  const beside = coursesBeside(grid, box);
  const met = beside.filter(
    (course) =>
      offHeadJoint(grid, box, "left", course) === 0 &&
      offHeadJoint(grid, box, "right", course) === 0,
  );
  return { beside: beside.map(({ number }) => number), met: met.map(({ number }) => number) };
}

/** The courses that an opening interrupts, from the bottom up. */
export function coursesBeside({ courses }: Grid, box: Pick<Box, "bottom" | "top">): Course[] {
  return courses.filter((course) => course.bottom < box.top && box.bottom < course.top);
}

function offHeadJoint({ lattice }: Grid, box: Box, side: "left" | "right", { number }: Course): Nm {
  const place = box[side] - lattice.x - courseShift(lattice, number);
  return offEdges(place, lattice.face.across, moduleAcross(lattice), side === "left");
}

/**
 * How far a place, counted from a tile's near edge, is from the edge at which the tiles before it end
 * (`farEdge`), or those behind it begin; 0 within a joint.
 */
export function offEdges(place: Nm, face: Nm, module: Nm, farEdge: boolean): Nm {
  const within = place - Math.floor(place / module) * module;
  if (within >= face || within === 0) return 0;
  return farEdge
    ? Math.min(face - within, within + module - face)
    : Math.min(within, module - within);
}
