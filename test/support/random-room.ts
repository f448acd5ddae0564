import type { Nm } from "../../src/measure/index.js";
import type { Random } from "./random.js";
import { randomFrom } from "./random.js";
import { randomShape } from "./random-shape.js";
import { GRID, meeting, randomWall, type SketchOptions } from "./random-sketch.js";
import type { LaySketch, Sketch, WallSketch } from "./sketch.js";

export interface RoomOptions extends SketchOptions {
  /** Whether walls may have outlines, legs, benches, curbs, soffits and a second lay. */
  readonly shapes: boolean;
  /** How often a wall's start is left to the solver. */
  readonly open: number;
  /** Walls at most. */
  readonly walls: number;
}

export const ANY_ROOM: RoomOptions = {
  ...{ measured: 0.15, holes: true, corners: true, most: 6 },
  ...{ shapes: true, open: 0.25, walls: 4 },
};

const NAMES = ["north", "east", "south", "west", "pier"];

/**
 * A random room: walls from left to right, most of them joined by an inside or an outside corner, some closed to a
 * ring; some walls start as the bond goes on round their left corner.
 */
export function randomRoom(seed: number, options: RoomOptions = ANY_ROOM): Sketch {
  const random = randomFrom(seed);
  const tile = randomTile(random);
  const accent = randomTile(random);
  const trim = { along: GRID * random.integer(60, 300), across: GRID * random.integer(16, 64) };
  const bed = GRID * random.integer(2, 8);
  const size = { tile, trim, options };
  const count = random.integer(1, options.walls);
  const plain = NAMES.slice(0, count).map((name) => randomWall(random, size, name));
  const shaped = options.shapes
    ? plain.map((wall) => randomShape(random, wall, { tile, accent }))
    : plain;
  const walls = joined(random, shaped).map((wall) => withStart(random, wall, options));
  return { bed, tile, accent, trim, walls };
}

function randomTile(random: Random): Sketch["tile"] {
  return {
    across: GRID * random.integer(96, 600),
    up: GRID * random.integer(64, 400),
    thickness: GRID * random.integer(6, 16),
  };
}

type Corner = (random: Random, left: WallSketch, right: WallSketch) => [WallSketch, WallSketch];

function joined(random: Random, walls: readonly WallSketch[]): WallSketch[] {
  const room = [...walls];
  const isRing = walls.length > 2 && random.chance(0.4);
  for (let i = 0; i < walls.length - (isRing ? 0 : 1); i++) {
    const next = (i + 1) % walls.length;
    if (!isRing && random.chance(0.15)) continue;
    const corner = random.chance(0.65) ? insideCorner : outsideCorner;
    [room[i], room[next]] = corner(random, room[i]!, room[next]!);
  }
  return room;
}

const insideCorner: Corner = (random, left, right) => {
  const [mine, other] = random.pick(LAPS);
  return [
    meeting(left, "right", `corner ${right.name} ${mine}`, randomJoint(random)),
    meeting(right, "left", `corner ${left.name} ${other}`, randomJoint(random)),
  ];
};

const outsideCorner: Corner = (random, left, right) => {
  const joint = randomJoint(random);
  if (random.chance(0.35)) {
    return [
      meeting(left, "right", `outside ${right.name} mitre`, joint),
      meeting(right, "left", `outside ${left.name} mitre`, joint),
    ];
  }
  const trim = random.chance(0.5) ? " trim edging" : "";
  const [mine, other] = random.pick(LAPS);
  const end = (lap: "under" | "over") => (lap === "over" ? `over${trim}` : "under");
  const width = (lap: "under" | "over") => (lap === "over" ? null : joint);
  return [
    meeting(left, "right", `outside ${right.name} ${end(mine)}`, width(mine)),
    meeting(right, "left", `outside ${left.name} ${end(other)}`, width(other)),
  ];
};

const LAPS = [
  ["under", "over"],
  ["over", "under"],
] as const;

function randomJoint(random: Random): Nm {
  return GRID * 2 * random.integer(0, 4);
}

function range(random: Random, min: Nm): LaySketch["joint"] {
  return { min, max: min + GRID * random.integer(1, 4) };
}

/** Left open, going on from the wall at the left (never from the first one's left, so that no circle comes about), or as it is. */
function withStart(random: Random, wall: WallSketch, { open, corners }: RoomOptions): WallSketch {
  const { lay, sides, name } = wall;
  const isLeft = random.chance(open);
  const across: LaySketch["across"] = isLeft && random.chance(0.8) ? null : lay.across;
  const up: LaySketch["up"] = isLeft && random.chance(0.8) ? null : lay.up;
  const [kind, from] = sides.left.meets.split(" ");
  const joint = isLeft && random.chance(0.3) ? range(random, lay.joint as Nm) : lay.joint;
  const isCarried = corners && (kind === "corner" || kind === "outside") && name !== NAMES[0];
  if (!isCarried || !random.chance(0.4)) return { ...wall, lay: { ...lay, joint, across, up } };
  const goesOn = random.pick(["wrapped added", "wrapped swallowed", "mirrored"] as const);
  return {
    ...wall,
    lay: { ...lay, across: { goesOn, from: from! }, up: random.chance(0.5) ? null : lay.up },
  };
}
