import { divideRounded, type Nm } from "../../measure/index.js";
import type { InsideAcross, InsideFace, InsideUp, Lay } from "../../model/index.js";
import { courseShift, firstPast, lastBefore, latticeOf, moduleUp } from "../lattice.js";
import type { Lattice, Region } from "../solved.js";
import { upOrigin } from "../start.js";
import type { InsidePlot, InsideWall } from "./inside-walls.js";

/** Rows of tile on a surface: the lattice of row 0, and where a tile of each row begins. */
export interface Rows {
  readonly lattice: Lattice;
  readonly leftOf: (row: number) => Nm;
}

/** The rows of a surface in its region: going on from the wall's, or as is usual, but for what the plan says of their start. */
export function rowsOf(plot: InsidePlot, face: InsideWall, region: Region): Rows {
  const rows = goesOn(plot, face.lay)
    ? rowsFromWall(plot, face, region)
    : ownRows(plot, face, region);
  const own = plot.inside.lays[face.face];
  const stated = own?.up ? withCourses(rows, statedCourse(plot, face, region, own.up)) : rows;
  return own?.across
    ? withStart(stated, face.face, region, statedLeft(plot, face.lay, region, own.across))
    : stated;
}

function withCourses({ lattice, leftOf }: Rows, y: Nm): Rows {
  return { lattice: { ...lattice, y }, leftOf };
}

/** `x` is where course 1 begins; on the head, which is folded out upwards, the row at the front. */
function withStart({ lattice }: Rows, face: InsideFace, { bounds }: Region, x: Nm): Rows {
  if (face !== "head") return { lattice, leftOf: () => x };
  const front = lastBefore(lattice.y, moduleUp(lattice), bounds.top);
  return { lattice, leftOf: (row) => x - courseShift(lattice, front - row + 1) };
}

/** The bottom of one course where the plan states it; heights are the wall's. */
function statedCourse(
  { opening, inside }: InsidePlot,
  { face, wall, lay }: InsideWall,
  region: Region,
  up: InsideUp,
): Nm {
  const ground = { wall, region, lay, joint: lay.joint.min };
  if (up.kind !== "joint") return upOrigin(ground, up);
  const foot = opening.at.y + (face === "back" ? (inside.fall ?? 0) : 0);
  return upOrigin(ground, { kind: "joint", y: up.y - foot });
}

/** The left edge of a tile where the plan states it; places are the wall's. */
function statedLeft(
  { wall, opening }: InsidePlot,
  { tile, joint }: Lay,
  { bounds }: Region,
  across: InsideAcross,
): Nm {
  const face = tile.face.across;
  if (across.kind === "full-tile") {
    return across.from === "left" ? bounds.left : bounds.right - face;
  }
  const { centre } = across;
  const middle =
    centre.on === "surface"
      ? bounds.left + bounds.right
      : (centre.on === "place" ? 2 * centre.x : wall.size.across) - 2 * opening.at.x;
  return across.kind === "tile"
    ? divideRounded(middle - face, 2)
    : divideRounded(middle + joint.min, 2);
}

/** Whether a surface goes on from the wall's joints: it has the wall's module. */
export function goesOn({ round }: InsidePlot, { tile, joint }: Lay): boolean {
  const { lattice } = round;
  const { face } = tile;
  const isAlike = face.across === lattice.face.across && face.up === lattice.face.up;
  return isAlike && joint.min === lattice.joint;
}

/**
 * The back shows the wall's own lattice, as if seen through the opening. The sides have the wall's courses, each begun
 * whole at the front. The sill's front row has its head joints in line with the course under it, the
 * head's with the course over it; further rows go on in the bond.
 */
function rowsFromWall(plot: InsidePlot, face: InsideWall, region: Region): Rows {
  const { opening, inside, round } = plot;
  const { at } = opening;
  const wall = round.lattice;
  const { lay } = face;
  const joint = wall.joint;
  const rows = (y: Nm, leftOf: Rows["leftOf"], bonded: Lay = lay): Rows => ({
    lattice: latticeOf(bonded, joint, 0, y),
    leftOf,
  });
  // Courses that are set may have other bed joints than head joints.
  const inCourses = (y: Nm, leftOf: Rows["leftOf"]): Rows => {
    const { lattice } = rows(y, leftOf);
    return { lattice: { ...lattice, ...("bed" in wall ? { bed: wall.bed } : {}) }, leftOf };
  };
  const { bounds } = region;
  const across = wall.face.across;
  const perpends = (course: number): Nm => wall.x + courseShift(wall, course) - at.x;
  switch (face.face) {
    case "back":
      return inCourses(wall.y - at.y - (inside.fall ?? 0), (row) => perpends(row + 1));
    case "left":
      return inCourses(wall.y - at.y, () => bounds.left);
    case "right":
      return inCourses(wall.y - at.y, () => bounds.right - across);
    case "sill": {
      const under = courseUnder(plot);
      return rows(bounds.bottom, (row) => perpends(under + row));
    }
    case "head": {
      const over = courseOver(plot);
      // Its rows go inwards from the top, so that the bond runs the other way as they are counted.
      return rows(bounds.top - wall.face.up, (row) => perpends(over - row), mirrored(lay));
    }
  }
}

/** The wall's course in which the opening's bottom lies, or that ends just under it. */
function courseUnder({ opening, round }: InsidePlot): number {
  const { lattice } = round;
  return Math.ceil((takenBox(opening, round.region).bottom - lattice.y) / moduleUp(lattice));
}

/** The wall's course in which the opening's top lies, or that begins just over it. */
function courseOver({ opening, round }: InsidePlot): number {
  const { lattice } = round;
  const { face } = lattice;
  return firstPast(lattice.y, face.up, moduleUp(lattice), takenBox(opening, round.region).top) + 1;
}

function takenBox(opening: InsidePlot["opening"], { takeaways }: Region): { bottom: Nm; top: Nm } {
  const box = takeaways.find((each) => each.opening === opening)?.box;
  return box ?? { bottom: opening.at.y, top: opening.at.y + opening.size.up };
}

function mirrored(lay: Lay): Lay {
  const { bond } = lay;
  return bond.kind === "stack" ? lay : { ...lay, bond: { ...bond, p: bond.q - bond.p } };
}

/**
 * Another tile starts in the middle, on a tile or a joint as leaves the wider ends, with a full course at the sill or,
 * of the sill and the head, at the front; a side with a whole tile at the front. Of tile that goes a whole number of
 * times into the wall's courses, the back and the sides have their bed joints on the wall's.
 */
function ownRows(plot: InsidePlot, { face, wall, lay }: InsideWall, region: Region): Rows {
  const joint = lay.joint.min;
  const x = usualLeft(face, lay, region);
  const from = face === "head" ? "top" : "bottom";
  const y =
    onWallsBeds(plot, face, lay) ??
    upOrigin({ wall, region, lay, joint }, { kind: "full-course", from });
  const lattice = latticeOf(lay, joint, x, y);
  return { lattice, leftOf: (row) => x + courseShift(lattice, row + 1) };
}

/** Where a course begins whose bed joints have their middles on the wall's; null where no start could do that. */
function onWallsBeds(
  { opening, inside, round }: InsidePlot,
  face: InsideFace,
  lay: Lay,
): Nm | null {
  if (face === "sill" || face === "head") return null;
  const wall = round.lattice;
  const module = lay.tile.face.up + lay.joint.min;
  if (moduleUp(wall) % module !== 0) return null;
  const bed = moduleUp(wall) - wall.face.up;
  const foot = opening.at.y + (face === "back" ? (inside.fall ?? 0) : 0);
  return wall.y - foot + divideRounded(lay.joint.min - bed, 2);
}

function usualLeft(face: InsideFace, { tile, joint }: Lay, { bounds }: Region): Nm {
  const { across } = tile.face;
  if (face === "left") return bounds.left;
  if (face === "right") return bounds.right - across;
  const module = across + joint.min;
  const middle = bounds.left + bounds.right;
  const onTile = divideRounded(middle - across, 2);
  const onJoint = divideRounded(middle + joint.min, 2);
  const end = (x: Nm): Nm => (((x - joint.min - bounds.left) % module) + module) % module;
  return end(onTile) >= end(onJoint) ? onTile : onJoint;
}
