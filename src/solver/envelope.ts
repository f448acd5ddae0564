import type { Nm } from "../measure/index.js";
import { type Chain, valueAfter, valueAt } from "./chain.js";

/** Where one of several lines is the highest. */
interface Stretch {
  readonly line: Chain;
  readonly from: Nm;
  readonly to: Nm;
}

/**
 * The highest of several lines at each place, each as far as it reaches from its first to its last point; together they
 * leave no gap. Where one ends over another, there is a riser. Where two cross, their places are rounded to either side,
 * so that what is between is nowhere lower than either.
 */
export function highestOf(lines: readonly Chain[]): Chain {
  if (lines.length === 1) return lines[0]!;
  const places = placesOf(lines);
  const stretches = joined(places.slice(1).map((to, i) => stretchBetween(lines, places[i]!, to)));
  const at: Nm[] = [];
  const value: Nm[] = [];
  const put = (place: Nm, height: Nm): void => {
    if (at.at(-1) === place && value.at(-1) === height) return;
    at.push(place);
    value.push(height);
  };
  for (const { line, from, to } of stretches) {
    put(from, valueAfter(line, from));
    line.at.forEach((place, i) => {
      if (place > from && place < to) put(place, line.value[i]!);
    });
    put(to, valueAt(line, to));
  }
  return { at, value };
}

/** All places at which a line begins, bends or ends, or at which two of them cross. */
function placesOf(lines: readonly Chain[]): Nm[] {
  const own = [...new Set(lines.flatMap(({ at }) => at))].sort((a, b) => a - b);
  const crossings = own.slice(1).flatMap((to, i) => {
    const from = own[i]!;
    const over = lines.filter((line) => reaches(line, from, to));
    return over.flatMap((line, k) =>
      over.slice(k + 1).flatMap((other) => crossing(line, other, from, to)),
    );
  });
  return [...new Set([...own, ...crossings])].sort((a, b) => a - b);
}

/** The whole places on either side of where two lines cross, which are straight between two places. */
function crossing(line: Chain, other: Chain, from: Nm, to: Nm): Nm[] {
  const before = valueAfter(line, from) - valueAfter(other, from);
  const after = valueAt(line, to) - valueAt(other, to);
  if (before * after >= 0) return [];
  const place = from + ((to - from) * before) / (before - after);
  return [Math.floor(place), Math.ceil(place)];
}

/** The line that is the highest between two neighbouring places; in the nanometre where two cross, what joins both. */
function stretchBetween(lines: readonly Chain[], from: Nm, to: Nm): Stretch {
  const over = lines.filter((line) => reaches(line, from, to));
  const start = Math.max(...over.map((line) => valueAfter(line, from)));
  const end = Math.max(...over.map((line) => valueAt(line, to)));
  const line = over.find((each) => valueAfter(each, from) === start && valueAt(each, to) === end);
  return { line: line ?? { at: [from, to], value: [start, end] }, from, to };
}

function joined(stretches: readonly Stretch[]): Stretch[] {
  const all: Stretch[] = [];
  for (const stretch of stretches) {
    const last = all.at(-1);
    if (last?.line === stretch.line && last.to === stretch.from) {
      all[all.length - 1] = { ...last, to: stretch.to };
    } else all.push(stretch);
  }
  return all;
}

function reaches({ at }: Chain, from: Nm, to: Nm): boolean {
  return at[0]! <= from && at.at(-1)! >= to;
}
