import { makeLabel, spreadOut } from "../labels.js";
import { rounded } from "../picture.js";
import type { DimensionRank, Label, RuledLine } from "../scene.js";
import { textWidth } from "../text-metrics.js";

/** A stretch to be dimensioned: along x for a row, along y (downwards) for a column; mm. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  /** null: drawn, but its length is not told. */
  readonly text: string | null;
}

/** A row below the wall or a column beside it, and what it measures. */
export interface RankWish {
  readonly part: string;
  readonly caption: string | null;
  readonly stretches: readonly Stretch[];
}

export interface LaidRank {
  readonly rank: DimensionRank;
  readonly labels: readonly Label[];
  readonly leaders: readonly RuledLine[];
  /** How far it reaches from the wall, in ems past its line. */
  readonly reach: number;
}

/** Where a rank goes. */
export interface RankPlace {
  readonly em: number;
  /** The dimension line: its y for a row, its x for a column. */
  readonly line: number;
  /** Where the thin lines from the wall begin. */
  readonly wall: number;
  /** The wall's own left end, before which a row's caption stands. */
  readonly left?: number;
}

const SIZE = 0.95;
/** From a dimension line to the middle of the text over it. */
const TEXT_OVER = 0.92;
/** From a dimension line to the text beside it. */
const TEXT_BESIDE = 0.55;
const GAP = 0.5;

/** A row of dimensions below a wall, its figures over the line. */
export function layRow(wish: RankWish, place: RankPlace): LaidRank {
  const { em, line, wall } = place;
  const size = SIZE * em;
  const told = wish.stretches.filter((stretch) => stretch.text !== null);
  const places = spreadOut(
    told.map((s) => {
      const width = textWidth(s.text!, size) + GAP * em;
      return { wish: wishedPlace(s, width, wish.stretches, em), size: width };
    }),
  );
  const labels = told.map((s, i) =>
    makeLabel({
      text: s.text!,
      role: "dimension",
      x: places[i]!,
      y: line - TEXT_OVER * em,
      size,
    }),
  );
  const leaders = told.flatMap((s, i): RuledLine[] => {
    const middle = (s.from + s.to) / 2;
    const room = (s.to - s.from) / 2;
    const half = textWidth(s.text!, size) / 2;
    // A figure off its stretch at the end of a row stands over the line's own end.
    if (Math.abs(places[i]! - middle) <= Math.max(room, half)) return [];
    if (isEnd(s, wish.stretches)) return [];
    return [leader([middle, line, places[i]!, line - 0.32 * em])];
  });
  if (wish.caption !== null) {
    const leftmost = Math.min(
      place.left ?? Infinity,
      ...wish.stretches.map((s) => s.from),
      ...labels.map((label) => label.box.left),
    );
    labels.push(
      makeLabel({
        text: wish.caption,
        role: "caption",
        x: leftmost - 0.8 * em,
        y: line - TEXT_OVER * em,
        size,
        anchor: "end",
      }),
    );
  }
  const ends = endsOf(wish.stretches);
  const tails = told.flatMap((s, i) => {
    const half = textWidth(s.text!, size) / 2;
    if (!isEnd(s, wish.stretches)) return [];
    if (places[i]! < s.from) return [places[i]! - half, line, s.from, line];
    return places[i]! > s.to ? [s.to, line, places[i]! + half, line] : [];
  });
  return {
    rank: {
      part: wish.part,
      lines: [...wish.stretches.flatMap((s) => [s.from, line, s.to, line]), ...tails].map(rounded),
      ticks: ends.flatMap((x) => [rounded(x), rounded(line)]),
      extensions: ends.flatMap((x) => [x, wall, x, line + 0.35 * em].map(rounded)),
    },
    labels,
    leaders,
    reach: 0.5,
  };
}

/** A column of dimensions beside a wall, its figures on the far side of the line. */
export function layColumn(wish: RankWish, place: RankPlace, side: "left" | "right"): LaidRank {
  const { em, line, wall } = place;
  const size = SIZE * em;
  const outwards = side === "left" ? -1 : 1;
  const told = wish.stretches.filter((stretch) => stretch.text !== null);
  const places = spreadOut(told.map((s) => ({ wish: (s.from + s.to) / 2, size: 1.3 * size })));
  const labels = told.map((s, i) =>
    makeLabel({
      text: s.text!,
      role: "dimension",
      x: line + outwards * TEXT_BESIDE * em,
      y: places[i]!,
      size,
      anchor: side === "left" ? "end" : "start",
    }),
  );
  const leaders = told.flatMap((s, i): RuledLine[] => {
    const middle = (s.from + s.to) / 2;
    if (Math.abs(places[i]! - middle) < 0.4 * em) return [];
    return [leader([line, middle, line + outwards * 0.48 * em, places[i]!])];
  });
  const ends = endsOf(wish.stretches);
  const widest = Math.max(0, ...told.map((s) => textWidth(s.text!, size)));
  return {
    rank: {
      part: wish.part,
      lines: wish.stretches.flatMap((s) => [line, s.from, line, s.to].map(rounded)),
      ticks: ends.flatMap((y) => [rounded(line), rounded(y)]),
      extensions: ends.flatMap((y) => [wall, y, line + outwards * 0.35 * em, y].map(rounded)),
    },
    labels,
    leaders,
    reach: TEXT_BESIDE + widest / em,
  };
}

/** Over its stretch's middle; beside it where it is the first or the last one and too narrow. */
function wishedPlace(stretch: Stretch, width: number, row: readonly Stretch[], em: number): number {
  const middle = (stretch.from + stretch.to) / 2;
  if (row.length < 2 || width <= stretch.to - stretch.from) return middle;
  if (stretch === row[0]) return stretch.from - width / 2 - GAP * em;
  return stretch === row.at(-1) ? stretch.to + width / 2 + GAP * em : middle;
}

function isEnd(stretch: Stretch, row: readonly Stretch[]): boolean {
  return row.length > 1 && (stretch === row[0] || stretch === row.at(-1));
}

/** The ends of the stretches, each once, in order. */
function endsOf(stretches: readonly Stretch[]): number[] {
  return [...new Set(stretches.flatMap((s) => [s.from, s.to]))].sort((a, b) => a - b);
}

function leader(points: readonly number[]): RuledLine {
  return { kind: "leader", points: points.map(rounded) };
}

/**
 * Stretches in as few ranks as keep any two of a rank from overlapping; the same stretch twice is
 * drawn once.
 */
export function intoRanks(stretches: readonly Stretch[]): Stretch[][] {
  const ranks: Stretch[][] = [];
  for (const stretch of stretches) {
    if (ranks.some((rank) => rank.some((each) => same(each, stretch)))) continue;
    const free = ranks.find((rank) => rank.every((each) => apart(each, stretch)));
    if (free) free.push(stretch);
    else ranks.push([stretch]);
  }
  return ranks;
}

function same(a: Stretch, b: Stretch): boolean {
  return a.from === b.from && a.to === b.to && a.text === b.text;
}

function apart(a: Stretch, b: Stretch): boolean {
  const [aLow, aHigh] = [Math.min(a.from, a.to), Math.max(a.from, a.to)];
  const [bLow, bHigh] = [Math.min(b.from, b.to), Math.max(b.from, b.to)];
  return aHigh <= bLow || bHigh <= aLow;
}
