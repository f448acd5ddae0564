import { type Nm, rootRaised } from "../measure/index.js";
import type { Edge } from "../model/index.js";
import { betweenRisers, type Chain, isStraight, moved, valueAt } from "./chain.js";
import { highestOf } from "./envelope.js";

/** A straight part of a side, moved square to itself; its own end, where the next one begins. */
interface Line {
  readonly at: Nm;
  readonly value: Nm;
  readonly run: Nm;
  readonly rise: Nm;
  /** What the move comes to in value, rounded up. */
  readonly lift: bigint;
  /** The same for reckoning where lines meet. */
  readonly steepness: number;
  readonly lifted: number;
}

/** How far a side's risers move along it, by the edge of the wall that each is: less than nothing drawn out. */
export type RiserMoves = Readonly<Record<"left" | "right", Nm>>;

/** For sides without risers, or where they stay. */
export const STILL: RiserMoves = { left: 0, right: 0 };

/** An end that is shorter could be rounded away. */
const LEAST_END: Nm = 2;

/**
 * A side moved square to its slopes, `inward` (1: towards greater values) for a positive `by`, outward for a
 * negative one. Its corners are mitred: each lies where the moved lines meet, its place rounded to the nanometre towards the
 * line that is then further off, its value further off, too. So the moved side is nowhere nearer to the other than
 * `by`, and its straight parts are further off by a few nanometres at most. Beyond its ends it stays flat. A part
 * that is too short to reach between its moved neighbours is left out. Risers move along it, and what ends over them goes on
 * to them, straight.
 */
export function drawnIn(
  chain: Chain,
  by: Nm,
  inward: 1 | -1,
  { left, right }: RiserMoves = STILL,
): Chain {
  const isStill = left === 0 && right === 0;
  if ((by === 0 && isStill) || isStraight(chain)) return moved(chain, inward * by);
  const isOut = by < 0 || left < 0 || right < 0;
  const way = isOut ? -inward : inward;
  // Seen as a line that is raised: drawn out, what was left of a riser's tile is right of it.
  const moves = isOut ? { fall: -right, rise: -left } : { fall: left, rise: right };
  const seen = { at: chain.at, value: chain.value.map((each) => way * each) };
  const raised = highestOf(raisedParts(seen, Math.abs(by), moves));
  return { at: raised.at, value: raised.value.map((each) => way * each) };
}

/** The parts of a line between its risers, raised, each going on as far as a riser under its end moves away from it. */
function raisedParts(
  chain: Chain,
  by: Nm,
  { fall, rise }: { readonly fall: Nm; readonly rise: Nm },
): Chain[] {
  const parts = betweenRisers(chain);
  return parts.map((part, i) => {
    const [from, to] = [part.at[0]!, part.at.at(-1)!];
    const isOver = (other: Chain | undefined, at: Nm): boolean =>
      other !== undefined && valueAt(part, at) > valueAt(other, at);
    const start = isOver(parts[i - 1], from) ? from - rise : from;
    const end = isOver(parts[i + 1], to) ? to + fall : to;
    return raisedBy(part, by, [start, end]);
  });
}

/** Where a tile is cut along a slope its corners are rounded to the nanometre, which may be towards it. */
const CUT_ROUNDING: Nm = 1;

/**
 * A side of a wall moved inward by a width: square to the slopes of an outline, and a nanometre more, so that what is
 * cut along it comes nowhere nearer (moved outward, as much further: its level parts come to lie where they were); a
 * side that was measured leans at most, and is moved across or up. Risers move by their own widths.
 */
export function sideDrawnIn(
  { outlined }: Pick<Edge, "outlined">,
  chain: Chain,
  by: Nm,
  inward: 1 | -1,
  risers: RiserMoves = STILL,
): Chain {
  if (!outlined || isStraight(chain)) return moved(chain, inward * by);
  return drawnIn(chain, by + Math.sign(by) * CUT_ROUNDING, inward, risers);
}

function raisedBy({ at, value }: Chain, by: Nm, ends: readonly [Nm, Nm]): Chain {
  const all = at.slice(1).map((to, i) => lineOf(at[i]!, value[i]!, to, value[i + 1]!, by));
  const lines = lastingOf(all, ends);
  const places = apart(
    meetings(lines, ends, 1).map((place, i) => roundedFor(place, lines[i - 1], lines[i])),
    lines,
  );
  return {
    at: places,
    value: places.map((place, i) =>
      Math.max(...lines.slice(Math.max(0, i - 1), i + 1).map((line) => heightAt(line, place))),
    ),
  };
}

function lineOf(at: Nm, value: Nm, to: Nm, end: Nm, by: Nm): Line {
  const [run, rise] = [to - at, end - value];
  const square = BigInt(run) ** 2n + BigInt(rise) ** 2n;
  return {
    at,
    value,
    run,
    rise,
    lift: rootRaised(BigInt(by) ** 2n * square),
    steepness: rise / run,
    lifted: (by * Math.hypot(run, rise)) / run,
  };
}

/** How high a moved line is at a whole place, rounded up from its exact height. */
function heightAt({ at, value, run, rise, lift }: Line, place: Nm): Nm {
  const over = BigInt(rise) * BigInt(place - at) + lift;
  const length = BigInt(run);
  const floor = over / length - (over % length < 0n ? 1n : 0n);
  return value + Number(floor * length === over ? floor : floor + 1n);
}

/** The lines that are left of those moved; each that came to nothing before goes before those that did so later. */
function lastingOf(all: readonly Line[], ends: readonly [Nm, Nm]): readonly Line[] {
  let lines = all;
  while (lines.length > 1) {
    const [before, after] = [meetings(lines, ends, 0), meetings(lines, ends, 1)];
    const shares = lines.map((_, i) => {
      const isEnd = i === 0 || i === lines.length - 1;
      const left = after[i + 1]! - after[i]!;
      if (left > (isEnd ? LEAST_END : 0)) return Infinity;
      const share = (before[i + 1]! - before[i]!) / (before[i + 1]! - before[i]! - left);
      return Number.isNaN(share) ? 0 : share;
    });
    const first = shares.indexOf(Math.min(...shares));
    if (shares[first] === Infinity) return lines;
    lines = lines.filter((_, i) => i !== first);
  }
  return lines;
}

/** Where neighbours meet, and where the side begins and ends, once lines have moved a share of their way. */
function meetings(lines: readonly Line[], [from, to]: readonly [Nm, Nm], share: number): number[] {
  const between = lines.slice(1).map((line, i) => meetingOf(lines[i]!, line, share));
  return [from, ...between, to];
}

function meetingOf(one: Line, other: Line, share: number): number {
  const onOne = one.value + one.rise + one.steepness * (other.at - one.at - one.run);
  const apartBy = other.value - onOne + share * (other.lifted - one.lifted);
  // Of two that run beside each other the higher one goes on.
  if (one.steepness === other.steepness) return apartBy > 0 ? -Infinity : Infinity;
  return other.at + apartBy / (one.steepness - other.steepness);
}

/** A place rounded towards where the steeper of two lines is the lower one: a nanometre is much along an upright one. */
function roundedFor(place: number, before: Line | undefined, after: Line | undefined): Nm {
  if (!before || !after) return place;
  const steeper = Math.abs(before.steepness) > Math.abs(after.steepness) ? before : after;
  return steeper.rise > 0 ? Math.floor(place) : Math.ceil(place);
}

/** Places a nanometre apart at least: the foot of a line that rises, and of one that falls, gives way outwards. */
function apart(rounded: readonly Nm[], lines: readonly Line[]): readonly Nm[] {
  const places = [...rounded];
  for (let i = lines.length - 1; i > 0; i--) {
    if (lines[i]!.rise > 0) places[i] = Math.min(places[i]!, places[i + 1]! - 1);
  }
  for (let i = 1; i < lines.length; i++) {
    places[i] = Math.max(places[i]!, places[i - 1]! + 1);
  }
  return places;
}
