import type { Nm } from "../../measure/index.js";
import type { Edge, Side, Wall } from "../../model/index.js";
import { sideDrawnIn, valueAt, type Chain, type Ring } from "../../solver/index.js";

/** The four sides of a wall or of its tiled region. */
export type Sides = Readonly<Record<Side, Chain>>;

/** Points along each side: bottom and top from the left, left and right from the bottom. */
export type SideRuns = Readonly<Record<Side, Ring>>;

/** The sides of the bare wall, bent by its site readings. */
export function bareSides(wall: Wall): Sides {
  return {
    left: bareSide(wall.edges.left, 0),
    right: bareSide(wall.edges.right, wall.size.across),
    bottom: bareSide(wall.edges.bottom, 0),
    top: bareSide(wall.edges.top, wall.size.up),
  };
}

/** The sides of a wall's region, each moved outwards by its own width, as it was drawn in. */
export function movedOut(
  { edges }: Pick<Wall, "edges">,
  sides: Sides,
  by: Readonly<Record<Side, Nm>>,
): Sides {
  const out = (side: Side, inward: 1 | -1): Chain =>
    sideDrawnIn(edges[side], sides[side], -by[side], inward);
  return {
    left: out("left", 1),
    right: out("right", -1),
    bottom: out("bottom", 1),
    top: out("top", -1),
  };
}

export function runsOf(sides: Sides): SideRuns {
  const lowLeft = cornerOf(sides.left, sides.bottom);
  const lowRight = cornerOf(sides.right, sides.bottom);
  const highLeft = cornerOf(sides.left, sides.top);
  const highRight = cornerOf(sides.right, sides.top);
  return {
    bottom: runAcross(sides.bottom, lowLeft, lowRight),
    top: runAcross(sides.top, highLeft, highRight),
    left: runUp(sides.left, lowLeft, highLeft),
    right: runUp(sides.right, lowRight, highRight),
  };
}

/** The ring that the four runs enclose, anticlockwise. */
export function outlineOf(runs: SideRuns): Ring {
  return [
    ...runs.bottom.slice(0, -2),
    ...runs.right.slice(0, -2),
    ...reversed(runs.top).slice(0, -2),
    ...reversed(runs.left).slice(0, -2),
  ];
}

/** The ring between two runs of one direction. */
export function ringBetween(one: Ring, other: Ring): Ring {
  return [...one, ...reversed(other)];
}

function bareSide(edge: Edge, base: Nm): Chain {
  if (edge.measured.length === 0) return { at: [0], value: [base] };
  return {
    at: edge.measured.map((reading) => reading.at),
    value: edge.measured.map((reading) => base + reading.off),
  };
}

/** Sides that are nearly upright and nearly level meet after a few turns; an outline's slopes take more. */
const TURNS = 200;

function cornerOf(upright: Chain, level: Chain): readonly [Nm, Nm] {
  let y = level.value[0]!;
  let x = upright.value[0]!;
  for (let turn = 0; turn < TURNS; turn++) {
    const [oldX, oldY] = [x, y];
    x = valueAt(upright, y);
    y = valueAt(level, x);
    if (x === oldX && y === oldY) break;
  }
  return [x, y];
}

/** A straight side has one reading, which is no corner. */
function isCorner(chain: Chain, value: Nm, from: Nm, to: Nm): boolean {
  return chain.at.length > 1 && value > from && value < to;
}

function runAcross(chain: Chain, from: readonly [Nm, Nm], to: readonly [Nm, Nm]): Ring {
  const between = chain.at.flatMap((x, i) =>
    isCorner(chain, x, from[0], to[0]) ? [x, chain.value[i]!] : [],
  );
  return [...from, ...between, ...to];
}

function runUp(chain: Chain, from: readonly [Nm, Nm], to: readonly [Nm, Nm]): Ring {
  const between = chain.at.flatMap((y, i) =>
    isCorner(chain, y, from[1], to[1]) ? [chain.value[i]!, y] : [],
  );
  return [...from, ...between, ...to];
}

function reversed(ring: Ring): Ring {
  const turned: number[] = [];
  for (let i = ring.length - 2; i >= 0; i -= 2) turned.push(ring[i]!, ring[i + 1]!);
  return turned;
}
