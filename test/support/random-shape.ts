import type { Nm } from "../../src/measure/index.js";
import type { Random } from "./random.js";
import { GRID, randomLay } from "./random-sketch.js";
import type { OpeningSketch, SecondLay, SideSketch, Sketch, WallSketch } from "./sketch.js";

type Tiles = Pick<Sketch, "tile"> & { readonly accent: Sketch["tile"] };

/** A wall with something that is no plain rectangle: an outline, legs, what stands before it, a second lay. */
export function randomShape(random: Random, wall: WallSketch, tiles: Tiles): WallSketch {
  const kind = random.integer(0, 9);
  const shaped = kind < 2 ? outlined(random, wall) : kind === 2 ? withLegs(random, wall) : wall;
  const standing = random.chance(0.2) ? withStanding(random, shaped) : shaped;
  return random.chance(0.25) ? withSecond(random, standing, tiles) : standing;
}

/** The rectangle with something on top of it, or a step down under it; its sides are as the outline says. */
function outlined(random: Random, wall: WallSketch): WallSketch {
  const { across, up, sides } = wall;
  const more = grid(random, 64, across / 2);
  const at = grid(random, 64, across - 64 * GRID);
  const tops: readonly (readonly (readonly [Nm, Nm])[])[] = [
    [
      [across, up],
      [0, up + more],
    ],
    [
      [across, up + more],
      [0, up],
    ],
    [
      [across, up],
      [at, up],
      [at, up + more],
      [0, up + more],
    ],
    [
      [across, up],
      [GRID * Math.round(across / 2 / GRID), up + more],
      [0, up],
    ],
  ];
  const bottom: readonly (readonly [Nm, Nm])[] = random.chance(0.3)
    ? [
        [0, -more],
        [at, -more],
        [at, 0],
        [across, 0],
      ]
    : [
        [0, 0],
        [across, 0],
      ];
  const plain = (side: SideSketch): SideSketch => ({ ...side, measured: [] });
  const level = (meets: string): SideSketch => ({ meets, measured: [], movement: 4 * GRID });
  return {
    ...wall,
    outline: [...bottom, ...random.pick(tops)],
    sides: {
      left: plain(sides.left),
      right: plain(sides.right),
      bottom: level("floor"),
      top: level("ceiling"),
    },
  };
}

function withLegs(random: Random, wall: WallSketch): WallSketch {
  const leg = (side: "left" | "right") => ({
    side,
    across: grid(random, 32, wall.across / 3),
    down: grid(random, 32, wall.up / 3),
  });
  const sides = random.pick([["left"], ["right"], ["left", "right"]] as const);
  const pan: SideSketch = { meets: "pan", measured: [], movement: 4 * GRID };
  return { ...wall, legs: sides.map(leg), sides: { ...wall.sides, bottom: pan } };
}

function withStanding(random: Random, wall: WallSketch): WallSketch {
  const kind = random.pick(["bench", "curb", "soffit"] as const);
  const [across, up] = [grid(random, 64, wall.across / 2), grid(random, 32, wall.up / 3)];
  const x = grid(random, 0, wall.across - across);
  const thing: OpeningSketch = {
    ...{ kind, name: kind, x, y: kind === "soffit" ? wall.up - up : 0, across, up },
    ...{ movement: 4 * GRID, frame: null, reaches: random.chance(0.7) },
  };
  const isClear = (other: OpeningSketch): boolean =>
    Math.max(other.x, x) - Math.min(other.x + other.across, x + across) > 64 * GRID;
  if (!wall.openings.every(isClear) || wall.holes.some((hole) => near(hole, thing))) return wall;
  return { ...wall, openings: [...wall.openings, thing] };
}

function near(
  hole: { readonly x: Nm; readonly across: Nm },
  { x, across }: OpeningSketch,
): boolean {
  return hole.x + hole.across > x - 64 * GRID && hole.x - hole.across < x + across + 64 * GRID;
}

function withSecond(random: Random, wall: WallSketch, { accent }: Tiles): WallSketch {
  const joint = GRID * random.integer(1, 12);
  const lay = randomLay(random, wall, joint, []);
  const [across, up] = [grid(random, 96, wall.across / 2), grid(random, 96, wall.up / 2)];
  const panel = {
    x: grid(random, 0, wall.across - across),
    y: grid(random, 0, wall.up - up),
    across,
    up,
  };
  const fromLeft = grid(random, 96, wall.across / 2);
  const place = random.pick<SecondLay["place"]>([
    { covers: "bottom", to: grid(random, 96, wall.up / 2) },
    { covers: "top", to: wall.up - grid(random, 96, wall.up / 2) },
    { covers: "left", to: fromLeft },
    { covers: "right", to: wall.across - fromLeft },
    { courses: Math.max(1, Math.min(3, Math.floor(wall.up / 2 / (accent.up + joint)))) },
    panel,
  ]);
  const up0 = "courses" in place ? null : lay.up;
  return { ...wall, second: { place, lay: { ...lay, up: up0 } } };
}

function grid(random: Random, least: number, most: Nm): Nm {
  return GRID * random.integer(least, Math.max(least, Math.floor(most / GRID)));
}
