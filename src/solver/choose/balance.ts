import type { Nm } from "../../measure/index.js";
import { type Chain, rangeBetween } from "../chain.js";
import { courseShift, moduleAcross, moduleUp } from "../lattice.js";
import type { Lattice, Region } from "../solved.js";

/** A row of tiles, and what of the wall is seen clear of every slope. */
export interface Row {
  readonly face: Nm;
  readonly module: Nm;
  readonly clearLow: Nm;
  readonly clearHigh: Nm;
}

/** What is seen of the first and last tile of a row. */
export interface Ends {
  readonly low: Nm;
  readonly high: Nm;
}

/** A lay's balance is told from these, wherever it starts. */
export interface Balance {
  readonly across: Row;
  readonly up: Row;
  /** The shifts of the phases that tell: no more than there are courses for certain. */
  readonly shifts: readonly Nm[];
}

/** The balance of a region's lays with this lattice's face, joint and bond. */
export function balanceOf(region: Region, lattice: Lattice): Balance {
  const { bounds, hiddenLeft, hiddenRight } = region;
  const upright = (chain: Chain) => rangeBetween(chain, bounds.bottom, bounds.top);
  const level = (chain: Chain) => rangeBetween(chain, bounds.left, bounds.right);
  const across = {
    face: lattice.face.across,
    module: moduleAcross(lattice),
    clearLow: upright(hiddenLeft ?? region.left).high,
    clearHigh: upright(hiddenRight ?? region.right).low,
  };
  const up = {
    face: lattice.face.up,
    module: moduleUp(lattice),
    clearLow: level(region.bottom).high,
    clearHigh: level(region.top).low,
  };
  const phases = Math.min(lattice.q, Math.max(1, tilesWithin(up)));
  const shifts = Array.from({ length: phases }, (_, step) => courseShift(lattice, step + 1));
  return { across, up, shifts };
}

/** How many tiles of a row are seen at least, however it starts: a joint may stand at its very end. */
export function tilesWithin({ clearLow, clearHigh, face, module }: Row): number {
  return Math.max(0, Math.ceil((clearHigh - clearLow - (module - face)) / module));
}

/** The two ends of the row of tiles from `origin`, at the narrow end where a side is measured. */
export function endsOf(row: Row, origin: Nm): Ends {
  const { face, module, clearLow, clearHigh } = row;
  if (clearLow >= clearHigh) return { low: 0, high: 0 };
  const first = origin + (Math.floor((clearLow - origin - face) / module) + 1) * module;
  const last = origin + (Math.ceil((clearHigh - origin) / module) - 1) * module;
  return {
    low: Math.max(0, Math.min(first + face, clearHigh) - Math.max(first, clearLow)),
    high: Math.max(0, Math.min(last + face, clearHigh) - Math.max(last, clearLow)),
  };
}

/**
 * How much the ends across differ, in nanometres: the left ends of the bond's phases in order of
 * size against the right ends in order of size, summed. So a running bond whose left ends are its
 * right ones in other courses is in balance: what differs there is the bond's doing.
 */
export function imbalanceAcross({ across, shifts }: Balance, x: Nm): Nm {
  if (shifts.length === 1) {
    const { low, high } = endsOf(across, x);
    return difference(low, high);
  }
  // Every start of every joint of a room is asked for this.
  if (shifts.length === 2)
    return imbalanceOfTwo(endsOf(across, x + shifts[0]!), endsOf(across, x + shifts[1]!));
  const [lows, highs]: [Nm[], Nm[]] = [[], []];
  for (const shift of shifts) {
    const { low, high } = endsOf(across, x + shift);
    putInOrder(lows, low);
    putInOrder(highs, high);
  }
  let sum = 0;
  for (let i = 0; i < lows.length; i++) sum += difference(lows[i]!, highs[i]!);
  return sum;
}

function imbalanceOfTwo(one: Ends, other: Ends): Nm {
  return (
    difference(Math.min(one.low, other.low), Math.min(one.high, other.high)) +
    difference(Math.max(one.low, other.low), Math.max(one.high, other.high))
  );
}

/** Puts a size into a rising list; bonds have few phases. */
function putInOrder(sizes: Nm[], size: Nm): void {
  let i = sizes.length;
  for (; i > 0 && sizes[i - 1]! > size; i--) sizes[i] = sizes[i - 1]!;
  sizes[i] = size;
}

/** How much the bottom and the top course differ in height, in nanometres. */
export function imbalanceUp({ up }: Balance, y: Nm): Nm {
  const { low, high } = endsOf(up, y);
  return difference(low, high);
}

/** An odd nanometre can't be shared out between two ends, so it isn't held against a start. */
export function difference(a: Nm, b: Nm): Nm {
  const apart = Math.abs(a - b);
  return apart - (apart % 2);
}
