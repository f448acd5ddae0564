import type { Nm } from "../../src/measure/index.js";
import type { Edge, Opening, Plan, Side, Step, Wall } from "../../src/model/index.js";
import type { Box, Ring } from "../../src/solver/index.js";
import { boxRing } from "./clipping.js";
import { directed } from "./ring.js";

/** Far outside any wall of the tests: 1 km. */
const FAR: Nm = 1_000_000_000_000;

/** A measured side as the plan states it, drawn in: points along the side and how far in they lie. */
export interface SideLine {
  readonly side: Side;
  /** Rising; one point for a straight side. */
  readonly points: readonly (readonly [at: Nm, value: Nm])[];
}

/**
 * What is not tiled of a wall, worked out from the model alone by the language's own words and by no
 * code of the solver: what lies beyond each side, what each opening and each step of its outline takes away, and the round holes.
 */
export interface ReferenceWall {
  readonly sides: readonly SideLine[];
  /** Where other walls' tile hides this wall's ends. */
  readonly hidden: readonly SideLine[];
  readonly openings: readonly Box[];
  readonly circles: readonly { readonly x: Nm; readonly y: Nm; readonly across: Nm }[];
}

export function referenceWall(plan: Plan, wall: Wall, joint: Nm): ReferenceWall {
  const sides: readonly Side[] = ["left", "right", "bottom", "top"];
  return {
    sides: sides.map((side) => sideLine(wall, side, drawnIn(plan, wall.edges[side], joint))),
    hidden: sides.flatMap((side) => hiddenLine(plan, wall, side)),
    openings: [
      ...wall.openings.map((opening) => takenBy(opening, joint)),
      ...wall.steps.map((step) => stepBox(step, joint)),
    ],
    circles: wall.holes.map(({ at, across }) => ({ ...at, across })),
  };
}

/** Everything outside the tiled region, as rings that may overlap; round holes left out. */
export function outsideRings({ sides, openings }: ReferenceWall): Ring[] {
  return [...sides.map(beyond), ...openings.map(boxRing)];
}

export function hiddenRings({ hidden }: ReferenceWall): Ring[] {
  return hidden.map(beyond);
}

/** Whether the side's line is straight and square. */
export function isSquare({ points }: SideLine): boolean {
  return points.every(([, value]) => value === points[0]![1]);
}

/** The half plane (bent by the readings) beyond a side, anticlockwise. */
export function beyond({ side, points }: SideLine): Ring {
  const outward = side === "left" || side === "bottom" ? -FAR : FAR;
  const line: (readonly [Nm, Nm])[] = [[-FAR, points[0]![1]], ...points, [FAR, points.at(-1)![1]]];
  const closed = [...line, [FAR, outward] as const, [-FAR, outward] as const];
  const upright = side === "left" || side === "right";
  const ring = closed.flatMap(([at, value]) => (upright ? [value, at] : [at, value]));
  return directed(ring, 1);
}

function sideLine(wall: Wall, side: Side, inset: Nm): SideLine {
  const far = side === "right" ? wall.size.across : side === "top" ? wall.size.up : 0;
  const inward = side === "left" || side === "bottom" ? 1 : -1;
  const { measured } = wall.edges[side];
  const readings = measured.length > 0 ? measured : [{ at: 0, off: 0 }];
  return {
    side,
    points: readings.map(({ at, off }) => [at, far + off + inward * inset] as const),
  };
}

function drawnIn(plan: Plan, { meets, joint: edgeJoint }: Edge, joint: Nm): Nm {
  const width = edgeJoint?.width ?? 0;
  if (meets.kind === "free") return meets.trim === null ? 0 : meets.trim.face.across + joint;
  if (meets.kind === "outside") {
    const face = build(plan, meets.wall);
    if (meets.lap === "under") return width - plan.bed;
    if (meets.lap === "mitre") return Math.round(width / 2) - face;
    return ("trim" in meets && meets.trim ? meets.trim.face.across + joint : 0) - face;
  }
  return meets.kind === "corner" && meets.lap === "over" ? build(plan, meets.wall) + width : width;
}

function hiddenLine(plan: Plan, wall: Wall, side: Side): SideLine[] {
  const { meets } = wall.edges[side];
  if (meets.kind !== "corner" || meets.lap !== "under") return [];
  return [sideLine(wall, side, build(plan, meets.wall))];
}

function build(plan: Plan, name: string): Nm {
  const other = plan.walls.find((wall) => wall.name === name);
  const thickness = (other?.lays ?? []).map(({ tile }) => tile.thickness);
  return thickness.length > 0 ? Math.max(...thickness) + plan.bed : 0;
}

/** What an outline leaves out, with the joints of the sides that the tile round it meets. */
function stepBox({ left, bottom, right, top, meets }: Step, joint: Nm): Box {
  const off = (edge: Edge | null): Nm => {
    if (!edge) return 0;
    if (edge.meets.kind !== "free") return edge.joint?.width ?? 0;
    return edge.meets.trim ? edge.meets.trim.face.across + joint : 0;
  };
  return {
    left: left - off(meets.left),
    bottom: bottom - off(meets.bottom),
    right: right + off(meets.right),
    top: top + off(meets.top),
  };
}

function takenBy({ at, size, frame, movement, reaches }: Opening, joint: Nm): Box {
  const by = frame ? frame.trim.face.across - frame.inset + joint : (movement ?? 0);
  return {
    left: at.x - by,
    bottom: reaches === "floor" ? -FAR : at.y - by,
    right: at.x + size.across + by,
    top: reaches === "ceiling" ? FAR : at.y + size.up + by,
  };
}
