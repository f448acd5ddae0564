import type { Nm } from "../../measure/index.js";
import type { Box } from "../box.js";
import type { Chain } from "../chain.js";
import { firstPast, lastBefore } from "../lattice.js";
import type { Bound } from "./bounds.js";
import { type Axis, type Field, isFlat, type Reach } from "./field.js";
import { movedSpan, type Span } from "./start-box.js";

/** What pieces along measured sides cost at least; where they are no more slivers, so many are under half. */
export interface Scribed {
  readonly slivers: number;
  readonly underHalf: number;
}

/** A bound of other pieces, with what those along measured sides cost. */
export function withScribed<Cost extends Bound>(
  bound: Cost,
  { slivers, underHalf }: Scribed,
): Cost {
  return {
    ...bound,
    slivers: bound.slivers + slivers,
    underHalf: bound.underHalf + underHalf,
  };
}

/** A row of tiles along a side that slopes: which sizes are too small there, and which tiles may be. */
interface Row {
  readonly along: Axis;
  /** How far apart tiles stand that are alike. */
  readonly repeat: Nm;
  /** How many of them may meet an opening or a hole. */
  readonly touched: number;
}

/** What the pieces along a sloping bottom and top cost at least, for starts up in a span and any start across. */
export function scribedUp(field: Field, y: Span): Scribed {
  const { up, across } = field;
  return scribed(up, y, up.half, (span) => ({
    along: across,
    repeat: across.module,
    touched: touchedAlong(field.obstacles, across.module, span, "up"),
  }));
}

/** What the pieces along a sloping left and right cost at least, for starts across in a span and any start up. */
export function scribedAcross(field: Field, x: Span): Scribed {
  const { up, across, shifts, judge } = field;
  const repeat = up.module * shifts.length;
  // In a running bond an end is held to the sliver limit alone.
  const half = judge.forcesEnds ? across.sliver : across.half;
  let [slivers, underHalf] = [0, 0];
  for (const shift of shifts) {
    const phase = scribed(across, movedSpan(x, shift), half, (span) => ({
      along: up,
      repeat,
      touched: touchedAlong(field.obstacles, repeat, span, "across"),
    }));
    slivers += phase.slivers;
    underHalf += phase.underHalf;
  }
  return { slivers, underHalf };
}

/** Whether the pieces along a side are judged at a narrow end. Those along an outline's slope are told by no bound. */
function narrows(side: Reach): boolean {
  return !isFlat(side) && !side.outlined;
}

function scribed(axis: Axis, origin: Span, half: Nm, rowOf: (span: Span) => Row): Scribed {
  const { face, module, sliver, seenFrom, seenTo } = axis;
  const most = Math.max(half, sliver);
  let [slivers, underHalf] = [0, 0];
  if (narrows(seenFrom)) {
    const last = lastBefore(origin.to + face - most, module, seenFrom.high);
    for (let k = firstPast(origin.from, face, module, seenFrom.low); k <= last; k++) {
      const far = movedSpan(origin, k * module + face);
      // The other side, sloping, may leave nothing of these tiles.
      if (!isFlat(seenTo) && far.to > seenTo.low) break;
      const row = rowOf({ from: far.from - face, to: far.to });
      add(row, seenFrom.chain, far.to - sliver, far.to - most, far.from, "least");
    }
  }
  // A row may lie along one side only, or its tiles would be counted twice.
  if (narrows(seenTo) && (isFlat(seenFrom) || seenTo.low - seenFrom.high > module)) {
    const last = lastBefore(origin.to, module, seenTo.high);
    for (let k = firstPast(origin.from, most, module, seenTo.low); k <= last; k++) {
      const near = movedSpan(origin, k * module);
      const row = rowOf({ from: near.from, to: near.to + face });
      add(row, seenTo.chain, near.from + sliver, near.from + most, near.to, "most");
    }
  }
  return { slivers, underHalf };

  /** Tiles that meet the chain between `edge` and `slim` are slivers; up to `small` they are too small. */
  function add(row: Row, chain: Chain, slim: Nm, small: Nm, edge: Nm, which: "least" | "most") {
    const between = (limit: Nm) => {
      const tiles =
        which === "least" ? tilesAt(row, chain, limit, edge) : tilesAt(row, chain, edge, limit);
      return Math.max(0, tiles - row.touched);
    };
    const surely = between(slim);
    slivers += surely;
    if (small !== slim) underHalf += Math.max(0, between(small) - surely);
  }
}

/** How many tiles of a row, cut at neither end, meet a chain where it runs between two levels, at least. */
function tilesAt({ along, repeat }: Row, chain: Chain, from: Nm, to: Nm): number {
  const { clearLow, clearHigh, face } = along;
  let tiles = 0;
  // The near edges of tiles that are counted already, or may be with the next stretch.
  let open = clearLow;
  let end = clearLow - 1;
  const last = chain.at.length - 1;
  for (let i = 0; i <= last + 1; i++) {
    // Flat before the first point and beyond the last.
    const [a, b] = [i === 0 ? -Infinity : chain.at[i - 1]!, i > last ? Infinity : chain.at[i]!];
    const [va, vb] = [chain.value[Math.max(0, i - 1)]!, chain.value[Math.min(last, i)]!];
    const stretch = stretchWithin(a, b, va, vb, from, to);
    if (!stretch) continue;
    const low = Math.max(Math.ceil(stretch[0]) + 1 - face, clearLow);
    const high = Math.min(Math.floor(stretch[1]) - 1, clearHigh - face);
    if (low > high) continue;
    if (low > end + 1) {
      tiles += Math.floor((end - open + 1) / repeat);
      open = low;
    }
    end = Math.max(end, high);
  }
  return tiles + Math.floor((end - open + 1) / repeat);
}

/** Where a straight piece of chain runs between two levels, drawn in by a nanometre for rounding. */
function stretchWithin(a: Nm, b: Nm, va: Nm, vb: Nm, from: Nm, to: Nm): readonly [Nm, Nm] | null {
  if (from + 1 >= to - 1) return null;
  if (va === vb) return va > from && va < to ? [a, b] : null;
  const placeOf = (value: Nm) => a + ((b - a) * (value - va)) / (vb - va);
  const [p, r] = [placeOf(from + 1), placeOf(to - 1)];
  const low = Math.max(a, Math.min(p, r));
  const high = Math.min(b, Math.max(p, r));
  return low < high ? [low, high] : null;
}

/** How many tiles of a row somewhere in a span meet an obstacle, at most. */
function touchedAlong(
  obstacles: readonly Box[],
  repeat: Nm,
  span: Span,
  axis: "across" | "up",
): number {
  let tiles = 0;
  for (const { left, bottom, right, top } of obstacles) {
    const [from, to] = axis === "up" ? [bottom, top] : [left, right];
    const length = axis === "up" ? right - left : top - bottom;
    if (from < span.to && to > span.from) tiles += Math.ceil(length / repeat) + 1;
  }
  return tiles;
}
