import type { UpStart } from "../../src/model/index.js";
import { type SettledStart, type SolvedPlan } from "../../src/solver/index.js";
import type { LaySketch, SideSketch, Sketch, WallSketch } from "./sketch.js";

/** The plan as seen in a mirror: left is right. */
export function mirrored(sketch: Sketch): Sketch {
  return { ...sketch, walls: sketch.walls.map(mirroredWall) };
}

function mirroredWall(wall: WallSketch): WallSketch {
  const { across, sides } = wall;
  const level = (side: SideSketch): SideSketch => ({
    ...side,
    measured: [...side.measured].reverse().map(([at, off]) => [across - at, off]),
  });
  const upright = (side: SideSketch): SideSketch => ({
    ...side,
    measured: side.measured.map(([at, off]) => [at, off === 0 ? 0 : -off]),
  });
  return {
    ...wall,
    sides: {
      left: upright(sides.right),
      right: upright(sides.left),
      bottom: level(sides.bottom),
      top: level(sides.top),
    },
    openings: wall.openings.map((o) => ({ ...o, x: across - o.x - o.across })),
    holes: wall.holes.map((hole) => ({ ...hole, x: across - hole.x })),
    lay: { ...wall.lay, ...mirroredStart(wall), ...mirroredSet(wall) },
  };
}

function mirroredSet({ across, lay: { set } }: WallSketch): Pick<LaySketch, "set"> {
  if (!set) return {};
  const ends = { left: "right", right: "left" } as const;
  const tops = set.tops.map(({ at, y }) => {
    if (at === null) return { at, y };
    return { at: typeof at === "number" ? across - at : ends[at], y };
  });
  return { set: { ...set, tops } };
}

function mirroredStart({ across: width, lay }: WallSketch): Pick<LaySketch, "bond" | "across"> {
  const { bond, across } = lay;
  const turned = bond === "stack" ? bond : { p: bond.q - bond.p, q: bond.q };
  if (across && "full" in across) {
    return { bond: turned, across: { full: across.full === "left" ? "right" : "left" } };
  }
  if (across && "at" in across)
    return { bond: turned, across: { ...across, at: width - across.at } };
  return { bond: turned, across };
}

/** Every wall, opening and hole under another name. */
export function renamed(sketch: Sketch): Sketch {
  const other = (name: string) => `other-${name}`;
  const meets = (text: string) =>
    text.replace(/^corner (\S+)/, (_, name: string) => `corner ${other(name)}`);
  const side = (s: SideSketch): SideSketch => ({ ...s, meets: meets(s.meets) });
  return {
    ...sketch,
    walls: sketch.walls.map((wall) => ({
      ...wall,
      name: other(wall.name),
      sides: {
        left: side(wall.sides.left),
        right: side(wall.sides.right),
        bottom: side(wall.sides.bottom),
        top: side(wall.sides.top),
      },
      openings: wall.openings.map((o) => ({ ...o, name: other(o.name) })),
      holes: wall.holes.map((hole) => ({ ...hole, name: other(hole.name) })),
      lay: renamedStarts(wall.lay, other),
    })),
  };
}

function renamedStarts(lay: LaySketch, other: (name: string) => string): LaySketch {
  const { across, up } = lay;
  return {
    ...lay,
    across:
      across && "on" in across && across.on !== "wall"
        ? { ...across, on: { opening: other(across.on.opening) } }
        : across,
    up: up && "opening" in up ? { ...up, opening: other(up.opening) } : up,
  };
}

/** The starts and the joint left to the solver. */
export function leftToSolver(sketch: Sketch, joint: LaySketch["joint"] | null): Sketch {
  const lay = (old: LaySketch): LaySketch => ({
    ...old,
    joint: joint ?? old.joint,
    across: null,
    up: null,
  });
  return { ...sketch, walls: sketch.walls.map((wall) => ({ ...wall, lay: lay(wall.lay) })) };
}

/** The starts and joints that the solver chose, written down. */
export function writtenDown(sketch: Sketch, { walls }: SolvedPlan): Sketch {
  return {
    ...sketch,
    walls: sketch.walls.map((wall, i) => {
      const laid = walls[i]!.lays[0]!;
      const lay: LaySketch = {
        ...wall.lay,
        joint: laid.joint,
        across: acrossSketch(laid.across),
        up: upSketch(laid.up),
      };
      return { ...wall, lay };
    }),
  };
}

function acrossSketch(start: SettledStart): LaySketch["across"] {
  if (start.kind === "full-tile") return { full: start.from };
  // A sketch has one wall: no start goes on from another.
  if (!("centre" in start)) return null;
  const { kind, centre } = start;
  if (centre.on === "place") return { kind, at: centre.x };
  return { kind, on: centre.on === "wall" ? "wall" : { opening: centre.opening.name } };
}

function upSketch(start: UpStart): LaySketch["up"] {
  if (start.kind === "full-course") return { full: start.from };
  if (start.kind === "joint") return { jointAt: start.y };
  return { relation: start.relation, opening: start.opening.name };
}
