import type {
  Edge,
  Lay,
  LayArea,
  LayBound,
  Opening,
  Plan,
  Side,
  Wall,
} from "../../src/model/index.js";
import type { Nm } from "../../src/measure/index.js";
import { edge, NOWHERE, oneWall } from "./choose/model-plan.js";

/** Walls of several lays, built straight from the model; lengths in small numbers of nanometres. */

/** Tile of 100 x 50, 8 thick on a bed of 3: 11 stand on the substrate. */
const FACE = [100, 50] as const;
const THICKNESS: Nm = 8;
const BED: Nm = 3;

export function place(at: Nm): LayBound {
  return { kind: "place", at };
}

export function past(lay: string): LayBound {
  return { kind: "lay", lay };
}

/** What a lay has: its bounds, and what else is said of it; the joint beside it is a hard one. */
export function area(
  bounds: LayArea["bounds"],
  over: Partial<Omit<LayArea, "joint">> & { joint?: Nm | null } = {},
): LayArea {
  const { joint: width = null, ...rest } = over;
  const joint = width === null ? null : ({ kind: "joint", width, origin: NOWHERE } as const);
  return { bounds, courses: null, joint, rest: false, ...rest };
}

/** A lay in stack bond with a joint of 2, full tile from the left, full course from the bottom. */
export function layOf(name: string, over: Partial<Lay> & { width?: Nm } = {}): Lay {
  const { width = 2, ...stated } = over;
  const { lay } = oneWall({ face: FACE, size: [1000, 800] });
  return {
    ...lay,
    name,
    tile: { ...lay.tile, thickness: THICKNESS },
    joint: { ...lay.joint, min: width, max: width },
    across: { kind: "full-tile", from: "left" },
    up: { kind: "full-course", from: "bottom" },
    ...stated,
  };
}

export interface Several {
  readonly size?: readonly [Nm, Nm];
  readonly sides?: Partial<Record<Side, Partial<Edge>>>;
  readonly openings?: readonly Opening[];
  readonly holes?: readonly (readonly [Nm, Nm, Nm])[];
}

/** A wall of 1000 x 800 (unless it says another size), tiled to 3 from each side: 3 to 997 and 3 to 797. */
export function wallOf(lays: readonly Lay[], given: Several = {}): { plan: Plan; wall: Wall } {
  const { size = [1000, 800], sides = {} } = given;
  const joint = { kind: "movement", width: 3 } as const;
  const bare = oneWall({ ...given, face: FACE, size });
  const side = (name: Side) => edge(name, { joint, ...sides[name] });
  const edges = {
    left: side("left"),
    right: side("right"),
    bottom: side("bottom"),
    top: side("top"),
  };
  const wall: Wall = { ...bare.wall, edges, lays };
  const other: Wall = { ...bare.plan.walls[1]!, lays: [layOf("field")] };
  return { plan: { ...bare.plan, bed: BED, walls: [wall, other] }, wall };
}

/** Where a part of a wall is, in the order left, bottom, right, top. */
export function sidesOf(box: { left: Nm; bottom: Nm; right: Nm; top: Nm }): Nm[] {
  return [box.left, box.bottom, box.right, box.top];
}
