import type { Lay, Plan, Wall } from "../model/index.js";
import { isStraight, type Chain } from "./chain.js";
import { goesStraightOn } from "./lay-order.js";
import { cellsWithin, latticeOf } from "./lattice.js";
import { regionOf } from "./region.js";
import type { Lattice, Region, SolvedWall } from "./solved.js";

/** The most pieces a plan may ask for; a wall that would go past it is left unlaid. */
export const MOST_PIECES = 2_000_000;

/** The most pieces that measured sides may scribe: each costs as much as a hundred plain ones. */
export const MOST_SCRIBED = 50_000;

/** Which walls stay bare, since the plan would come to too many pieces with them; null for those that don't. */
export function refusals(plan: Plan): SolvedWall["refused"][] {
  const left = { pieces: MOST_PIECES, scribed: MOST_SCRIBED };
  return plan.walls.map((wall) => {
    const asked = askedOf(plan, wall);
    if (asked.pieces > left.pieces) return { pieces: asked.pieces, most: MOST_PIECES };
    if (asked.scribed > left.scribed) return { pieces: asked.scribed, most: MOST_SCRIBED };
    left.pieces -= asked.pieces;
    left.scribed -= asked.scribed;
    return null;
  });
}

interface Asked {
  readonly pieces: number;
  readonly scribed: number;
}

/** How many pieces a wall may come to, and how many of them scribed, before any is laid. */
function askedOf(plan: Plan, wall: Wall): Asked {
  const none: Asked = { pieces: 0, scribed: 0 };
  // What is over set courses has what they leave: they are counted as one lay.
  const whole = wall.lays.filter((lay) => !wall.lays.some((other) => goesStraightOn(lay, other)));
  const lays = whole.map((lay) => askedByLay(plan, wall, lay));
  return [...lays, askedInside(wall)].reduce(
    (sum, { pieces, scribed }) => ({
      pieces: sum.pieces + pieces,
      scribed: sum.scribed + scribed,
    }),
    none,
  );
}

/** As if each surface inside an opening were as large as the largest, in the smallest tile that it may have. */
function askedInside({ openings, lays }: Wall): Asked {
  return openings.reduce(
    (sum, { inside, size }) => {
      if (!inside?.tiled) return sum;
      const tiles = [...lays, ...Object.values(inside.lays)].map(({ tile }) => tile.face);
      const across = Math.min(...tiles.map((face) => face.across));
      const up = Math.min(...tiles.map((face) => face.up));
      const side = Math.max(size.across, size.up, 2 * inside.depth);
      const [wide, high] = [Math.ceil(side / across) + 2, Math.ceil(side / up) + 2];
      return { pieces: sum.pieces + 5 * wide * high, scribed: sum.scribed + 2 * wide };
    },
    { pieces: 0, scribed: 0 },
  );
}

/** As if each lay had the whole wall: what of it a lay has is known only when those under it are laid. */
function askedByLay(plan: Plan, wall: Wall, lay: Lay): Asked {
  const joint = lay.joint.min;
  const highest = { ...wall, size: { ...wall.size, up: wall.stop?.max ?? wall.size.up } };
  const region = regionOf(plan, highest, joint);
  const lattice = latticeOf(lay, joint, 0, 0);
  const scribed = [
    ...[region.bottom, region.top].map((side) => cellsAlong(lattice, region, side, "level")),
    ...[region.left, region.right].map((side) => cellsAlong(lattice, region, side, "upright")),
  ];
  return {
    pieces: cellsWithin(lattice, region.bounds),
    scribed: scribed.reduce((sum, cells) => sum + cells, 0),
  };
}

/** How many tiles a measured side may run through; none where it is straight. */
function cellsAlong(
  lattice: Lattice,
  { bounds }: Region,
  side: Chain,
  runs: "level" | "upright",
): number {
  if (isStraight(side)) return 0;
  const low = Math.min(...side.value);
  const high = Math.max(...side.value);
  const reach = runs === "level" ? { bottom: low, top: high } : { left: low, right: high };
  return cellsWithin(lattice, { ...bounds, ...reach });
}

export function bareWall(plan: Plan, wall: Wall, refused: SolvedWall["refused"]): SolvedWall {
  const joint = wall.lays[0]?.joint.min ?? 0;
  return {
    wall,
    region: regionOf(plan, wall, joint),
    lays: [],
    trims: [],
    insides: [],
    refused,
  };
}
