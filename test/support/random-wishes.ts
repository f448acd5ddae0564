import type { Nm } from "../../src/measure/index.js";
import { type Random, randomFrom } from "./random.js";
import { GRID } from "./random-sketch.js";
import type { LaySketch, OpeningSketch, Sketch, WallSketch, WishSketch } from "./sketch.js";

/** How often something of a wall is left to the solver. */
const OPEN = 0.5;

/**
 * The same room with wishes in a random order, of all walls and of single ones: second lays, lists of courses, ranges of joints
 * and places are left open for them to choose.
 */
export function withWishes(sketch: Sketch, seed: number): Sketch {
  const random = randomFrom(seed + 77_777);
  const walls = sketch.walls.map((wall) => opened(random, wall, sketch.accent ?? null));
  const wishes = someOf(random, [
    "courses meet",
    "bond goes on",
    { noCutUnder: GRID * random.integer(8, 64) },
    `whole courses at ${random.pick(["bottom", "top"])}`,
    "equal ends",
    "few cuts",
  ]);
  return { ...sketch, walls: walls.map((wall) => withOwn(random, wall)), wishes };
}

function opened(random: Random, wall: WallSketch, accent: Sketch["accent"] | null): WallSketch {
  const { lay, second } = wall;
  const isList = accent !== null && !second && !lay.set && random.chance(0.25);
  return {
    ...wall,
    lay: openLay(random, lay),
    openings: wall.openings.map((opening) => freed(random, wall, opening)),
    ...(isList ? { list: random.integer(1, 3) } : {}),
    ...(second ? { second: { ...second, lay: openLay(random, second.lay) } } : {}),
  };
}

/** A lay with some of its start and its joint left open; one that goes on round a corner stays. */
function openLay(random: Random, lay: LaySketch): LaySketch {
  if (lay.set || (lay.across && "goesOn" in lay.across)) return lay;
  const { joint } = lay;
  const isRange = typeof joint === "number" && random.chance(0.2);
  return {
    ...lay,
    across: random.chance(OPEN) ? null : lay.across,
    up: random.chance(OPEN) ? null : lay.up,
    joint: isRange ? { min: joint, max: joint + GRID * random.integer(1, 4) } : joint,
  };
}

function freed(random: Random, wall: WallSketch, opening: OpeningSketch): OpeningSketch {
  const isMovable = opening.kind === "niche" || opening.kind === "window";
  if (!isMovable || !random.chance(0.3)) return opening;
  const room = (length: Nm, from: Nm, size: Nm): Nm =>
    GRID * random.integer(0, Math.max(0, Math.floor((length - from - size) / GRID)));
  const free = {
    across: random.chance(0.6) ? room(wall.across, opening.x, opening.across) : 0,
    up: random.chance(0.6) ? room(wall.up, opening.y, opening.up) : 0,
  };
  return { ...opening, free };
}

function withOwn(random: Random, wall: WallSketch): WallSketch {
  const feature = wall.openings.find(({ kind }) => kind === "niche" || kind === "window");
  if (!feature || !random.chance(0.4)) return wall;
  const edge = random.pick(["sill", "head"]);
  const own = [`centre on ${feature.name}`, `whole courses at ${edge} of ${feature.name}`];
  return { ...wall, wishes: someOf(random, own) };
}

/** One or more of some wishes, in a random order. */
function someOf(random: Random, all: readonly WishSketch[]): readonly WishSketch[] {
  const left = [...all];
  const many = random.integer(1, all.length);
  return Array.from({ length: many }, () => left.splice(random.integer(0, left.length - 1), 1)[0]!);
}
