import type { Nm } from "../../measure/index.js";
import { difference, endsOf, type Row } from "./balance.js";
import type { Span, StartBox } from "./start-box.js";

/** What is seen of a row's two end tiles, and where these are. */
interface Ends {
  readonly low: Nm;
  readonly high: Nm;
  readonly first: Nm;
  readonly last: Nm;
  /** Which tiles they are, and whether they are whole: the same at every corner where all changes evenly. */
  readonly firstTile: number;
  readonly lastTile: number;
  readonly wholeLow: boolean;
  readonly wholeHigh: boolean;
}

/** How much the ends across differ at least, over a box of starts. */
export function leastImbalanceAcross({ field: { balance }, x0, x1 }: StartBox): Nm {
  return leastOver(balance.across, balance.shifts, x0, x1);
}

/** How much the bottom and the top course differ at least, over a box of starts. */
export function leastImbalanceUp({ field: { balance }, y0, y1 }: StartBox): Nm {
  return leastOver(balance.up, [0], y0, y1);
}

function leastOver(row: Row, shifts: readonly Nm[], from: Nm, to: Nm): Nm {
  if (row.clearLow >= row.clearHigh) return 0;
  if (from === to) return differenceOf(shifts.map((shift) => endsOf(row, from + shift)));
  // Odd nanometres are forgiven, so the places next to the ends tell as well.
  const places = to - from < 3 ? [from, to] : [from, from + 1, to - 1, to];
  const ends = places.map((place) => shifts.map((shift) => endsAt(row, place + shift)));
  return changesEvenly(ends) ? Math.min(...ends.map(differenceOf)) : leastWithin(row, ends);
}

function endsAt({ face, module, clearLow, clearHigh }: Row, origin: Nm): Ends {
  const firstTile = Math.floor((clearLow - origin - face) / module) + 1;
  const lastTile = Math.ceil((clearHigh - origin) / module) - 1;
  const first = origin + firstTile * module;
  const last = origin + lastTile * module;
  return {
    low: Math.max(0, Math.min(first + face, clearHigh) - Math.max(first, clearLow)),
    high: Math.max(0, Math.min(last + face, clearHigh) - Math.max(last, clearLow)),
    first,
    last,
    firstTile,
    lastTile,
    wholeLow: first >= clearLow,
    wholeHigh: last + face <= clearHigh,
  };
}

/** Whether the sum of differences has no kink between the corners, so that it is least at one of them. */
function changesEvenly(corners: readonly (readonly Ends[])[]): boolean {
  const [one, ...others] = corners;
  const alike = others.every((ends) =>
    ends.every((end, phase) => {
      const same = one![phase]!;
      return (
        end.firstTile === same.firstTile &&
        end.lastTile === same.lastTile &&
        end.wholeLow === same.wholeLow &&
        end.wholeHigh === same.wholeHigh
      );
    }),
  );
  if (!alike || one!.some((end) => end.firstTile === end.lastTile)) return false;
  const lows = orderOf(one!, "low");
  const highs = orderOf(one!, "high");
  if (!others.every((ends) => isInOrder(ends, lows, "low") && isInOrder(ends, highs, "high"))) {
    return false;
  }
  return lows.every((low, i) => {
    const signs = corners.map((ends) => Math.sign(ends[low]!.low - ends[highs[i]!]!.high));
    return !(signs.includes(1) && signs.includes(-1));
  });
}

function orderOf(ends: readonly Ends[], end: "low" | "high"): number[] {
  return ends.map((_, phase) => phase).sort((a, b) => ends[a]![end] - ends[b]![end]);
}

function isInOrder(ends: readonly Ends[], order: readonly number[], end: "low" | "high"): boolean {
  return order.every((phase, i) => i === 0 || ends[order[i - 1]!]![end] <= ends[phase]![end]);
}

function differenceOf(ends: readonly Pick<Ends, "low" | "high">[]): Nm {
  const lows = ends.map((end) => end.low).sort((a, b) => a - b);
  const highs = ends.map((end) => end.high).sort((a, b) => a - b);
  return lows.reduce((sum, low, i) => sum + difference(low, highs[i]!), 0);
}

/** How much the ends differ at least, by what each of them may be at least and at most. */
function leastWithin(row: Row, corners: readonly (readonly Ends[])[]): Nm {
  const phases = corners[0]!.map((_, phase) => corners.map((ends) => ends[phase]!));
  const lows = phases.map((ends) => between(row, ends, "first", "low"));
  const highs = phases.map((ends) => between(row, ends, "last", "high"));
  const sorted = (spans: readonly Span[], end: "from" | "to") =>
    spans.map((span) => span[end]).sort((a, b) => a - b);
  const [lowTo, highFrom, highTo] = [
    sorted(lows, "to"),
    sorted(highs, "from"),
    sorted(highs, "to"),
  ];
  return sorted(lows, "from").reduce((sum, from, i) => {
    return sum + difference(Math.max(0, from - highTo[i]!, highFrom[i]! - lowTo[i]!), 0);
  }, 0);
}

/** The least and the greatest that is seen of an end. */
function between(
  { face, clearLow, clearHigh }: Row,
  corners: readonly Ends[],
  tile: "first" | "last",
  end: "low" | "high",
): Span {
  const numbered = tile === "first" ? "firstTile" : "lastTile";
  if (corners.some((ends) => ends[numbered] !== corners[0]![numbered]))
    return { from: 0, to: face };
  const places = corners.map((ends) => ends[tile]);
  const most =
    Math.min(Math.max(...places) + face, clearHigh) - Math.max(Math.min(...places), clearLow);
  return {
    from: Math.min(...corners.map((ends) => ends[end])),
    to: Math.min(face, Math.max(0, most)),
  };
}
