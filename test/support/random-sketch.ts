import { NM_PER, type Nm } from "../../src/measure/index.js";
import type { Side } from "../../src/model/index.js";
import { randomFrom, type Random } from "./random.js";
import type {
  HoleSketch,
  LaySketch,
  OpeningSketch,
  SideSketch,
  Sketch,
  WallSketch,
} from "./sketch.js";

/** Lengths are whole 1/32 in, so even nanometres: a middle or a half loses nothing. */
export const GRID: Nm = NM_PER.inch / 32;

/** The most that a measured side is off: 1/2 in. */
const MOST_OFF: Nm = 16 * GRID;

export interface SketchOptions {
  /** How often a side is measured: 0 keeps every side straight and square. */
  readonly measured: number;
  readonly holes: boolean;
  /** Whether a second wall may meet the first, round an inside or an outside corner. */
  readonly corners: boolean;
  /** Courses and columns at most. */
  readonly most: number;
}

export const ANY: SketchOptions = { measured: 0.4, holes: true, corners: true, most: 8 };
export const SQUARE: SketchOptions = { measured: 0, holes: false, corners: true, most: 8 };

const MEETS: Readonly<Record<Side, readonly string[]>> = {
  bottom: ["pan", "tub", "floor", "counter", "wall", "free", "free trim edging"],
  top: ["ceiling", "wall", "free", "free trim edging"],
  left: ["wall", "free", "free trim edging"],
  right: ["wall", "free", "free trim edging"],
};

/** A random plan with nothing wrong in it: one wall, or two that meet in a corner. */
export function randomSketch(seed: number, options: SketchOptions = ANY): Sketch {
  const random = randomFrom(seed);
  const tile = {
    across: GRID * random.integer(48, 600),
    up: GRID * random.integer(48, 400),
    thickness: GRID * random.integer(6, 16),
  };
  const trim = { along: GRID * random.integer(60, 300), across: GRID * random.integer(16, 64) };
  const size = { tile, trim, options };
  const first = randomWall(random, size, "back");
  const bed = GRID * random.integer(2, 8);
  if (!options.corners || !random.chance(0.3)) return { bed, tile, trim, walls: [first] };
  const [mine, other] = random.pick([
    ["under", "over"],
    ["over", "under"],
  ] as const);
  const joint = GRID * random.integer(0, 6);
  const second = randomWall(random, size, "return-wall");
  const around = { first, second, mine, other, joint };
  const walls = random.chance(0.4) ? outsideCorner(random, around) : insideCorner(around);
  return { bed, tile, trim, walls };
}

interface Around {
  readonly first: WallSketch;
  readonly second: WallSketch;
  readonly mine: "under" | "over";
  readonly other: "under" | "over";
  readonly joint: Nm;
}

function insideCorner({ first, second, mine, other, joint }: Around): WallSketch[] {
  return [
    meeting(first, "left", `corner ${second.name} ${mine}`, joint),
    meeting(second, "right", `corner ${first.name} ${other}`, joint),
  ];
}

/** The wall over may end in trim, and needs no joint; of a mitre both walls have it. */
function outsideCorner(
  random: Random,
  { first, second, mine, other, joint }: Around,
): WallSketch[] {
  if (random.chance(0.4)) {
    return [
      meeting(first, "left", `outside ${second.name} mitre`, joint),
      meeting(second, "right", `outside ${first.name} mitre`, joint),
    ];
  }
  const trim = random.chance(0.5) ? " trim edging" : "";
  const end = (lap: "under" | "over") => (lap === "over" ? `over${trim}` : "under");
  return [
    meeting(first, "left", `outside ${second.name} ${end(mine)}`, mine === "over" ? null : joint),
    meeting(
      second,
      "right",
      `outside ${first.name} ${end(other)}`,
      other === "over" ? null : joint,
    ),
  ];
}

export interface Sizes extends Pick<Sketch, "tile" | "trim"> {
  readonly options: SketchOptions;
}

/** A wall with one side as it meets another one. */
export function meeting(
  wall: WallSketch,
  side: Side,
  meets: string,
  movement: Nm | null,
): WallSketch {
  return { ...wall, sides: { ...wall.sides, [side]: { ...wall.sides[side], meets, movement } } };
}

export function randomWall(random: Random, sizes: Sizes, name: string): WallSketch {
  const { tile, options } = sizes;
  const fit = (face: Nm) =>
    GRID * Math.round((face * random.integer(20, options.most * 10)) / 10 / GRID);
  const size = {
    across: Math.max(fit(tile.across), GRID * 400),
    up: Math.max(fit(tile.up), GRID * 400),
  };
  const joint = GRID * random.integer(1, 12);
  const openings = randomOpenings(random, sizes, size, joint);
  return {
    name,
    ...size,
    sides: {
      left: randomSide(random, options, "left", size.up),
      right: randomSide(random, options, "right", size.up),
      bottom: randomSide(random, options, "bottom", size.across),
      top: randomSide(random, options, "top", size.across),
    },
    openings,
    holes: options.holes ? randomHoles(random, size, openings) : [],
    lay: randomLay(random, size, joint, openings),
  };
}

function randomSide(random: Random, options: SketchOptions, side: Side, length: Nm): SideSketch {
  const meets = random.pick(MEETS[side]);
  const movement = meets.startsWith("free") ? null : GRID * random.integer(0, 8);
  if (!random.chance(options.measured)) return { meets, measured: [], movement };
  const places = new Set(
    Array.from({ length: random.integer(1, 5) }, () => GRID * random.integer(0, length / GRID)),
  );
  const measured = [...places]
    .sort((a, b) => a - b)
    .map((at) => [at, random.integer(-MOST_OFF / GRID, MOST_OFF / GRID) * GRID] as const);
  return { meets, measured, movement };
}

function randomOpenings(
  random: Random,
  { trim }: Sizes,
  wall: { across: Nm; up: Nm },
  joint: Nm,
): OpeningSketch[] {
  const openings: OpeningSketch[] = [];
  const clearance = trim.across + joint;
  for (let n = random.integer(0, 2); n > 0; n--) {
    const kind = random.pick(["window", "niche", "door"] as const);
    const across = gridUpTo(random, wall.across / 2);
    const up = gridUpTo(random, wall.up / 2);
    const x = GRID * random.integer(0, (wall.across - across) / GRID);
    const y = kind === "door" ? 0 : GRID * random.integer(0, (wall.up - up) / GRID);
    // A frame keeps clear of the trim along a free side, wherever the side was measured.
    const room = 2 * clearance + MOST_OFF;
    const isFramed =
      random.chance(0.6) &&
      Math.min(x, wall.across - x - across, wall.up - y - up, kind === "door" ? room : y) >= room;
    const opening: OpeningSketch = {
      kind,
      name: `${kind}-${n}`,
      x,
      y,
      across,
      up,
      movement: random.chance(0.7) ? GRID * random.integer(0, 6) : null,
      frame: isFramed
        ? { join: random.pick(["mitre", "butt"]), inset: GRID * random.integer(0, 8) }
        : null,
    };
    if (openings.every((other) => areApart(opening, other, 2 * clearance))) openings.push(opening);
  }
  return openings;
}

function gridUpTo(random: Random, most: Nm): Nm {
  return GRID * random.integer(64, Math.max(64, Math.floor(most / GRID)));
}

function areApart(a: OpeningSketch, b: OpeningSketch, by: Nm): boolean {
  if (a.x + a.across + by < b.x || b.x + b.across + by < a.x) return true;
  if (a.kind === "door" || b.kind === "door") return false;
  return a.y + a.up + by < b.y || b.y + b.up + by < a.y;
}

function randomHoles(
  random: Random,
  wall: { across: Nm; up: Nm },
  openings: readonly OpeningSketch[],
): HoleSketch[] {
  const holes: HoleSketch[] = [];
  for (let n = random.integer(0, 2); n > 0; n--) {
    const across = 2 * GRID * random.integer(8, 72);
    const x = GRID * random.integer(across / GRID, (wall.across - across) / GRID);
    const y = GRID * random.integer(across / GRID, (wall.up - across) / GRID);
    const square = { x: x - across, y: y - across, across: 2 * across, up: 2 * across };
    const around = { ...square, kind: "niche", name: "", movement: null, frame: null } as const;
    const isClear =
      openings.every((opening) => areApart(opening, around, 0)) &&
      holes.every((other) => Math.hypot(other.x - x, other.y - y) > other.across + across);
    if (isClear) holes.push({ name: `valve-${n}`, x, y, across });
  }
  return holes;
}

export function randomLay(
  random: Random,
  wall: { across: Nm; up: Nm },
  joint: Nm,
  openings: readonly OpeningSketch[],
): LaySketch {
  const kind = random.pick(["tile", "joint"] as const);
  const opening = openings.length > 0 ? random.pick(openings).name : null;
  const across: LaySketch["across"][] = [
    { kind, on: "wall" },
    { kind, at: GRID * random.integer(0, wall.across / GRID) },
    { full: random.pick(["left", "right"]) },
  ];
  const up: LaySketch["up"][] = [
    { full: random.pick(["bottom", "top"]) },
    { jointAt: GRID * random.integer(0, wall.up / GRID) },
  ];
  if (opening !== null) {
    across.push({ kind, on: { opening } });
    up.push({ relation: random.pick(["under", "over"]), opening });
  }
  const q = random.integer(2, 5);
  return {
    bond: random.chance(0.4) ? "stack" : { p: random.integer(1, q - 1), q },
    joint,
    across: random.pick(across),
    up: random.pick(up),
  };
}
