import { NM_PER, type Nm } from "../../../src/measure/index.js";
import type {
  Bond,
  Edge,
  Lay,
  Meeting,
  Opening,
  Origin,
  Plan,
  Side,
  Tile,
  Trim,
  Wall,
} from "../../../src/model/index.js";
import type { Random } from "../../support/random.js";

/** Plans built straight from the model, for the tests of the choice alone. */

const PLACE = { line: 0, character: 0 };
export const NOWHERE: Origin = {
  file: "test.tileplan",
  range: { start: PLACE, end: PLACE },
  head: { start: PLACE, end: PLACE },
};
const BLOCK = { origin: NOWHERE, allows: [] };

/** A sixteenth of an inch. */
export const SIXTEENTH: Nm = NM_PER.inch / 16;
/** A sixty-fourth of an inch. */
export const STEP: Nm = NM_PER.inch / 64;

export function inches(value: number): Nm {
  return Math.round(value * NM_PER.inch);
}

export interface Given {
  readonly face: readonly [Nm, Nm];
  readonly size: readonly [Nm, Nm];
  readonly bond?: Bond;
  readonly joint?: readonly [Nm, Nm];
  readonly sides?: Partial<Record<Side, Partial<Edge>>>;
  readonly openings?: readonly Opening[];
  readonly holes?: readonly (readonly [Nm, Nm, Nm])[];
  readonly across?: Lay["across"];
  readonly up?: Lay["up"];
}

export interface OneWall {
  readonly plan: Plan;
  readonly wall: Wall;
  readonly lay: Lay;
}

export const TRIM: Trim = {
  ...BLOCK,
  name: "nose",
  title: "",
  face: { along: inches(5.875), across: inches(1.875) },
  thickness: inches(0.3125),
  lot: null,
  price: null,
};

export function edge(side: Side, over: Partial<Edge> = {}): Edge {
  return {
    side,
    meets: { kind: "wall" },
    measured: [],
    outlined: false,
    joint: { kind: "movement", width: NM_PER.inch / 8 },
    stated: true,
    origin: NOWHERE,
    ...over,
  };
}

export function window(
  at: readonly [Nm, Nm],
  size: readonly [Nm, Nm],
  over: Partial<Opening> = {},
): Opening {
  return {
    ...BLOCK,
    kind: "window",
    reaches: null,
    name: "sash",
    at: { x: at[0], y: at[1] },
    free: { x: null, y: null },
    size: { across: size[0], up: size[1] },
    frame: null,
    movement: SIXTEENTH,
    inside: null,
    ...over,
  };
}

export const FRAME = { trim: TRIM, join: "mitre", inset: 0, origin: NOWHERE } as const;

/** A plan of one laid wall, and a bare neighbour for its corners. */
export function oneWall(given: Given): OneWall {
  const [least, most] = given.joint ?? [SIXTEENTH, SIXTEENTH];
  const tile: Tile = {
    ...BLOCK,
    name: "field",
    title: "",
    face: { across: given.face[0], up: given.face[1] },
    thickness: inches(0.3125),
    variation: null,
    warpage: null,
    edges: null,
    box: null,
    directional: false,
    lot: null,
    price: null,
    breakage: null,
    spares: null,
  };
  const lay: Lay = {
    ...BLOCK,
    name: tile.name,
    area: null,
    goesOnFrom: null,
    set: null,
    soft: [],
    tile,
    bond: given.bond ?? { kind: "stack" },
    joint: { min: least, max: most, origin: NOWHERE },
    across: given.across ?? null,
    up: given.up ?? null,
  };
  const sides = given.sides ?? {};
  const wall: Wall = {
    ...BLOCK,
    name: "back",
    title: "",
    size: { across: given.size[0], up: given.size[1] },
    stop: null,
    outline: null,
    steps: [],
    risers: [],
    legs: [],
    edges: {
      left: edge("left", sides.left),
      right: edge("right", sides.right),
      bottom: edge("bottom", sides.bottom),
      top: edge("top", sides.top),
    },
    openings: given.openings ?? [],
    holes: (given.holes ?? []).map(([x, y, across], i) => ({
      name: `valve-${i}`,
      at: { x, y },
      across,
      plate: null,
      origin: NOWHERE,
    })),
    lays: [lay],
  };
  const plan: Plan = {
    ...BLOCK,
    title: "test",
    units: "inch",
    bed: NM_PER.inch / 8,
    limits: {},
    saw: null,
    mortar: null,
    grout: null,
    sealant: null,
    tiles: [tile],
    trims: [TRIM],
    walls: [wall, { ...wall, name: "side", openings: [], holes: [] }],
    wishes: [],
  };
  return { plan, wall, lay };
}

export interface Variety {
  readonly measured: boolean;
  readonly openings: number;
  readonly holes: boolean;
  readonly corners: boolean;
  /** Columns and courses at most. */
  readonly most: number;
  /** Whether sides may slope steeply, as an outline makes them. */
  readonly outlined?: boolean;
}

/** A random wall of a few columns; lengths are whole sixty-fourths of an inch. */
export function randomGiven(random: Random, variety: Variety): Given {
  const face = [STEP * random.integer(60, 420), STEP * random.integer(60, 260)] as const;
  const size = face.map((side) => {
    return (
      STEP *
      Math.max(300, random.integer(Math.round((1.2 * side) / STEP), (variety.most * side) / STEP))
    );
  }) as unknown as readonly [Nm, Nm];
  const q = random.integer(2, 4);
  const openings: Opening[] = [];
  for (let n = random.integer(0, variety.openings); n > 0; n--) {
    const opening = randomOpening(random, size, n);
    if (openings.every((other) => isClear(opening, other))) openings.push(opening);
  }
  const side = (name: Side, length: Nm) => {
    const any = randomSide(random, variety, name, length);
    const [across, up] = size;
    const isLevel = name === "bottom" || name === "top";
    return variety.outlined
      ? { ...any, ...slope(random, name, length, isLevel ? up : across) }
      : any;
  };
  return {
    face,
    size,
    bond: random.chance(0.4)
      ? { kind: "stack" }
      : { kind: "running", p: random.integer(1, q - 1), q },
    joint: [STEP * 4, STEP * 4],
    sides: {
      left: side("left", size[1]),
      right: side("right", size[1]),
      bottom: side("bottom", size[0]),
      top: side("top", size[0]),
    },
    openings,
    holes:
      variety.holes && random.chance(0.4)
        ? [
            [
              STEP * random.integer(0, size[0] / STEP),
              STEP * random.integer(0, size[1] / STEP),
              2 * STEP * random.integer(20, 140),
            ],
          ]
        : [],
  };
}

function randomSide(random: Random, variety: Variety, side: Side, length: Nm): Partial<Edge> {
  const measured =
    variety.measured && random.chance(0.35)
      ? [0, random.integer(1, 63) / 64, 1]
          .slice(0, random.integer(2, 3))
          .map((part) => ({ at: Math.round(part * length), off: STEP * random.integer(-24, 24) }))
      : [];
  const corners = variety.corners && (side === "left" || side === "right");
  const meets = random.pick<Meeting>([
    { kind: "wall" },
    { kind: "free", trim: null },
    { kind: "free", trim: TRIM },
    ...(corners
      ? ([
          { kind: "corner", wall: "side", lap: "under" },
          { kind: "corner", wall: "side", lap: "over" },
        ] as const)
      : []),
  ]);
  return { meets, measured };
}

/** The slopes of an outline along a side, as far as half the wall's depth there; or none. */
function slope(random: Random, side: Side, length: Nm, depth: Nm): Partial<Edge> {
  if (!random.chance(0.45)) return {};
  const inward = side === "left" || side === "bottom" ? 1 : -1;
  const most = Math.floor((random.pick([0.05, 0.2, 0.5]) * depth) / STEP);
  const places = [0, random.integer(4, 28) / 64, random.integer(32, 60) / 64, 1];
  const kept = random.pick([
    [0, 3],
    [0, 1, 3],
    [0, 1, 2, 3],
  ]);
  const measured = kept.map((i) => ({
    at: Math.round(places[i]! * length),
    off: inward * STEP * random.integer(0, most),
  }));
  return { measured, outlined: true };
}

function randomOpening(random: Random, size: readonly [Nm, Nm], n: number): Opening {
  const across = STEP * random.integer(32, Math.max(33, size[0] / STEP / 2));
  const up = STEP * random.integer(32, Math.max(33, size[1] / STEP / 2));
  const isDoor = random.chance(0.2);
  return window(
    [
      STEP * random.integer(0, (size[0] - across) / STEP),
      isDoor ? 0 : STEP * random.integer(0, (size[1] - up) / STEP),
    ],
    [across, up],
    {
      kind: isDoor ? "door" : "window",
      name: `opening-${n}`,
      frame: random.chance(0.4) ? FRAME : null,
    },
  );
}

function isClear(a: Opening, b: Opening): boolean {
  const by = inches(4);
  return (
    a.at.x + a.size.across + by < b.at.x ||
    b.at.x + b.size.across + by < a.at.x ||
    a.at.y + a.size.up + by < b.at.y ||
    b.at.y + b.size.up + by < a.at.y
  );
}
