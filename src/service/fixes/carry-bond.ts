import type { Nm } from "../../measure/index.js";
import {
  type BondWay,
  type Corner,
  type CornerCourse,
  cornerCourses,
  mostWrapOff,
} from "../../rules/index.js";
import { type AcrossStart, isCorner, type Wall } from "../../model/index.js";
import { acrossWords } from "../../sheets/index.js";
import { moduleAcross } from "../../solver/index.js";
import { cornerOf } from "./corner-of.js";
import type { Fix, Fixer } from "./fix.js";
import { stateStart } from "./state-start.js";

const TITLES: readonly (readonly [BondWay, string])[] = [
  ["added", "Wrap the bond, the corner's joint added"],
  ["swallowed", "Wrap the bond, the corner's joint swallowed"],
  ["mirrored", "Mirror the bond at the corner"],
];

/** Starts the covering wall so that the bond goes on round the corner, each way that can be had. */
export const carryBond: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "corner/bond-broken") return [];
  const corner = cornerOf(state, diagnostic);
  if (!corner) return [];
  const { limits, units } = state.outcome.plan;
  const courses = cornerCourses(corner);
  return TITLES.flatMap(([way, name]): Fix[] => {
    const shift = shiftOf(corner, courses, way, mostWrapOff(limits));
    if (shift === null) return [];
    const text = acrossWords(startOf(corner, way, shift, state.outcome.plan.walls), units);
    const edit = stateStart(state, corner.over.lay, "across", text);
    const title = `${name}: ${text}`;
    return edit ? [{ title, mends: diagnostic, preferred: false, edits: [edit] }] : [];
  });
};

/** The bond as a plan says it; where the other wall goes on from this one itself, the place that it comes to. */
function startOf(corner: Corner, way: BondWay, shift: Nm, walls: readonly Wall[]): AcrossStart {
  const { over, under } = corner;
  const wall = under.wall.wall.name;
  const ends = Object.values(over.wall.wall.edges);
  const corners = ends.filter(({ meets }) => isCorner(meets) && meets.wall === wall);
  if (corners.length > 1 || goesOnFrom(under.wall.wall, over.wall.wall, walls)) {
    return { kind: "tile", centre: { on: "place", x: startMovedBy(corner, shift) } };
  }
  const from = { wall, corner: over.side };
  if (way === "mirrored") return { kind: "mirrored", ...from };
  return { kind: "wrapped", ...from, joint: way === "swallowed" ? "swallowed" : "added" };
}

/** Whether a wall's start goes on from another's, by way of further walls too. */
function goesOnFrom(wall: Wall, other: Wall, walls: readonly Wall[]): boolean {
  let at: Wall | undefined = wall;
  for (let steps = 0; at && at !== other && steps <= walls.length; steps++) {
    const across: AcrossStart | null = at.lays[0]?.across ?? null;
    const from: string | null = across && "wall" in across ? across.wall : null;
    at = walls.find(({ name }) => name === from);
  }
  return at === other;
}

/** How far the tile moves from the corner, the same in every course; null where courses differ by more than `most`. */
function shiftOf(
  { over }: Corner,
  courses: readonly CornerCourse[],
  way: BondWay,
  most: Nm,
): Nm | null {
  const module = moduleAcross(over.lay.lattice);
  const shifts = courses.map(({ begin, wanted }) => wanted[way] - begin.shown);
  const [first] = shifts;
  if (first === undefined) return null;
  const differ = shifts.some((shift) => {
    const off = (((shift - first) % module) + module) % module;
    return Math.min(off, module - off) > most;
  });
  return differ ? null : first;
}

/** The middle of a tile of course 1 that is moved from the corner, near the middle of the wall. */
function startMovedBy({ over: { lay, wall, side } }: Corner, shift: Nm): Nm {
  const { lattice } = lay;
  const module = moduleAcross(lattice);
  const middle =
    lattice.x + (side === "left" ? shift : -shift) + Math.floor(lattice.face.across / 2);
  const modules = Math.round((wall.wall.size.across / 2 - middle) / module);
  return middle + modules * module;
}
