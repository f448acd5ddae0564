import type { Nm } from "../../src/measure/index.js";
import type { UpStart } from "../../src/model/index.js";
import { type SettledStart, type SolvedPlan } from "../../src/solver/index.js";
import type { LaySketch, SecondLay, SideSketch, Sketch, WallSketch } from "./sketch.js";

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
    lay: { ...wall.lay, ...mirroredStart(wall.lay, across), ...mirroredSet(wall) },
    ...mirroredShape(wall),
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

const OTHER = { left: "right", right: "left", bottom: "bottom", top: "top" } as const;

function mirroredShape(wall: WallSketch): Pick<WallSketch, "outline" | "legs" | "second"> {
  const { across, outline, legs, second } = wall;
  return {
    ...(outline && { outline: [...outline].reverse().map(([x, y]) => [across - x, y] as const) }),
    ...(legs && { legs: legs.map((leg) => ({ ...leg, side: OTHER[leg.side] })) }),
    ...(second && { second: mirroredSecond(second, across) }),
  };
}

function mirroredSecond({ place, lay }: SecondLay, width: Nm): SecondLay {
  const turned = { ...lay, ...mirroredStart(lay, width) };
  if ("courses" in place) return { place, lay: turned };
  if (!("covers" in place)) {
    return { place: { ...place, x: width - place.x - place.across }, lay: turned };
  }
  const covers = OTHER[place.covers];
  const to = covers === place.covers ? place.to : width - place.to;
  return { place: { covers, to }, lay: turned };
}

function mirroredStart({ bond, across }: LaySketch, width: Nm): Pick<LaySketch, "bond" | "across"> {
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
    text.replace(
      /^(corner|outside) (\S+)/,
      (_, kind: string, name: string) => `${kind} ${other(name)}`,
    );
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
  if (across && "goesOn" in across) {
    return {
      ...renamedStarts({ ...lay, across: null }, other),
      across: { ...across, from: other(across.from) },
    };
  }
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
