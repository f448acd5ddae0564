import type { Unit } from "../measure/index.js";
import type { Comparison, Pair, WallComparison, WallReading } from "./comparison.js";
import { exchanges } from "./exchanges.js";
import {
  isEmpty,
  newFindings,
  setCoursesAgainst,
  totalsOf,
  wallChanged,
  wallTotals,
} from "./totals.js";
import { counted, Words } from "./words.js";

/** One subject of a comparison, in whole sentences. */
export interface Section {
  readonly title: string;
  readonly lines: readonly string[];
}

/** What a plan of nothing but another text is told with. */
export const TEXT_ONLY = "Nothing changed but the text.";

/**
 * A comparison in words: what moved, cuts that changed, those of what is set already, findings, the smallest cut, alignments,
 * quantities, and the pieces that only moved apart from those cut differently. Silent about the rest;
 * no section at all where nothing changed.
 */
export function summarise(comparison: Comparison): readonly Section[] {
  if (isEmpty(comparison)) return [];
  const words = new Words(comparison.units.after);
  const walls = comparison.walls.filter(wallChanged);
  const several = comparison.walls.length > 1;
  const onWalls = (linesOf: (wall: WallComparison) => readonly string[]) =>
    walls.flatMap((wall) => linesOf(wall).map((line) => named(wall, line, several)));
  const sections: Section[] = [
    {
      title: "What moved",
      lines: [...onWalls((wall) => moveLines(wall, words)), ...planLines(comparison, words)],
    },
    { title: "Cuts that changed", lines: onWalls((wall) => cutLines(wall, words)) },
    {
      title: "On the wall already",
      lines: onWalls(({ onWall }) => onWall.before.map((each) => words.onWall(each))),
    },
    { title: "Findings", lines: findingLines(comparison, words, several) },
    { title: "Smallest cut, cut pieces", lines: onWalls((wall) => readingLines(wall, words)) },
    {
      title: "Alignments",
      lines: onWalls((wall) => words.alignments(wall.alignments)),
    },
    { title: "Quantities", lines: words.quantities(comparison.quantities) },
    { title: "Pieces", lines: onWalls((wall) => pieceLines(wall, words)) },
  ];
  return sections.filter(({ lines }) => lines.length > 0);
}

/** The weightiest of a comparison in one line, such as for a lens: `12 pieces cut differently, 1 new finding`. */
export function headline(comparison: Comparison): string {
  if (isEmpty(comparison)) return "nothing changed but the text";
  const { moved, recut, fresh, gone } = totalsOf(comparison);
  const found = newFindings(comparison);
  const against = setCoursesAgainst(comparison);
  const went = comparison.findings.filter(({ after }) => !after).length;
  const parts = [
    ...(against > 0 ? [`${counted(against, "set course")} cut differently`] : []),
    ...(recut > 0 ? [`${counted(recut, "piece")} cut differently`] : []),
    ...(fresh > 0 ? [`${fresh} new`] : []),
    ...(gone > 0 ? [`${gone} gone`] : []),
    ...(moved > 0 ? [`${moved} only moved`] : []),
    ...(found > 0 ? [counted(found, "new finding")] : []),
    ...(went > 0 ? [`${counted(went, "finding")} gone`] : []),
  ];
  return parts.length > 0 ? parts.join(", ") : "no piece is cut differently";
}

/** What is written over a wall in a picture of a comparison: how it moved, and its pieces by fate. */
export function wallNotes(wall: WallComparison, units: Unit): readonly string[] {
  const words = new Words(units);
  const lines = [...moveLines(wall, words), ...pieceLines(wall, words)];
  return lines.length > 0 ? lines : ["nothing changed"];
}

function named({ name }: WallComparison, line: string, several: boolean): string {
  return several ? `${name.after ?? name.before!}: ${line}` : line;
}

function planLines({ parts, facts }: Comparison, words: Words): string[] {
  return [...parts.map((part) => words.part(part)), ...facts.map((fact) => words.fact(fact))];
}

function moveLines(wall: WallComparison, words: Words): string[] {
  const { name, title, reading, shift } = wall;
  if (name.before === null)
    return [
      `the ${surfaceWord(name.after!)} is new: ${counted(reading.after?.pieces ?? 0, "piece")}`,
    ];
  if (name.after === null)
    return [
      `the ${surfaceWord(name.before)} is gone: ${counted(reading.before?.pieces ?? 0, "piece")}`,
    ];
  const starts = wall.facts.filter((fact) => fact.name === "across" || fact.name === "up");
  const rest = wall.facts.filter((fact) => !starts.includes(fact));
  return [
    ...(name.before === name.after || isInsideName(name.after)
      ? []
      : [`wall ${name.before} is now called ${name.after}`]),
    ...(title.before === title.after || isInsideName(name.after)
      ? []
      : [`title: ${JSON.stringify(title.before)} -> ${JSON.stringify(title.after)}`]),
    ...starts.map((fact) => words.fact(fact)),
    ...(shift ? [words.courses(shift)] : []),
    ...wall.parts.map((part) => words.part(part)),
    ...rest.map((fact) => words.fact(fact)),
  ];
}

/** The name of a surface inside an opening has its wall's and its opening's before it; a renamed one is told of those. */
function isInsideName(name: string): boolean {
  return name.includes(".");
}

function surfaceWord(name: string): string {
  return isInsideName(name) ? "surface" : "wall";
}

function cutLines(wall: WallComparison, words: Words): string[] {
  if (isWhole(wall)) return [];
  const { recut, fresh, gone } = wall.pieces;
  const most = <T extends { readonly count: number }>(groups: readonly T[]) =>
    [...groups].sort((a, b) => b.count - a.count);
  const { pairs, rest } = exchanges(most(recut));
  return [
    ...pairs.map((pair) => words.exchange(pair)),
    ...rest.map((group) => words.recut(group)),
    ...most(fresh.filter(({ piece }) => piece.cut !== "none")).map((group) =>
      words.apart(group, "new"),
    ),
    ...most(gone.filter(({ piece }) => piece.cut !== "none")).map((group) =>
      words.apart(group, "gone"),
    ),
  ];
}

/** Whether the wall came, went or is laid anew as a whole, so that its pieces need no list. */
function isWhole({ name, anew, reading }: WallComparison): boolean {
  return anew || name.before === null || name.after === null || !reading.before || !reading.after;
}

function findingLines({ findings, walls }: Comparison, words: Words, several: boolean): string[] {
  const nowCalled = new Map(
    walls.map(({ name }) => [name.before ?? name.after, name.after ?? name.before]),
  );
  const rank = (line: string) => ORDER.findIndex((word) => line.startsWith(word));
  return findings
    .map((finding) => {
      const wall = (finding.after ?? finding.before)?.wall;
      return { wall: wall && (nowCalled.get(wall) ?? wall), line: words.finding(finding) };
    })
    .sort((a, b) => rank(a.line) - rank(b.line))
    .map(({ wall, line }) => (several && wall ? `${wall}: ${line}` : line));
}

const ORDER = ["new", "no longer waived", "gone", "waived", "still"];

function readingLines({ reading }: WallComparison, words: Words): string[] {
  const { before, after } = reading;
  if (!before || !after) return [];
  const both: Pair<WallReading> = { before, after };
  const size = ({ smallest }: WallReading) => JSON.stringify(smallest);
  return [
    ...(size(before) === size(after) ? [] : [words.smallest(both)]),
    ...(before.cuts === after.cuts ? [] : [words.cuts(both)]),
    ...(before.mitred === after.mitred ? [] : [words.mitred(both)]),
  ];
}

function pieceLines(wall: WallComparison, words: Words): string[] {
  const { moved, recut, fresh, gone } = wallTotals(wall);
  if (wall.anew) return [`laid anew: ${gone} pieces before, ${fresh} now`];
  if (isWhole(wall)) return [];
  return [
    ...(moved > 0 ? [words.moved(wall.pieces.moved)] : []),
    ...(recut > 0 ? [`${counted(recut, "piece")} cut differently`] : []),
    ...(fresh > 0 ? [`${counted(fresh, "piece")} new`] : []),
    ...(gone > 0 ? [`${counted(gone, "piece")} gone`] : []),
  ];
}
