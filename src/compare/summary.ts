import { counted, type Unit } from "../measure/index.js";
import type { Comparison, WallComparison } from "./comparison.js";
import { exchanges } from "./exchanges.js";
import {
  isEmpty,
  newFindings,
  setCoursesAgainst,
  totalsOf,
  wallChanged,
  wallTotals,
} from "./totals.js";
import { alignmentWords } from "./words/alignment-words.js";
import { factWords, partWords } from "./words/fact-words.js";
import { findingWords } from "./words/finding-words.js";
import { Lengths } from "./words/lengths.js";
import {
  apartWords,
  exchangeWords,
  movedWords,
  onWallWords,
  recutWords,
  shiftWords,
} from "./words/piece-words.js";
import { quantityWords } from "./words/quantity-words.js";
import { readingWords } from "./words/reading-words.js";

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
  const lengths = new Lengths(comparison.units.after);
  const walls = comparison.walls.filter(wallChanged);
  const several = comparison.walls.length > 1;
  const onWalls = (linesOf: (wall: WallComparison) => readonly string[]) =>
    walls.flatMap((wall) => linesOf(wall).map((line) => named(wall, line, several)));
  const sections: Section[] = [
    {
      title: "What moved",
      lines: [...onWalls((wall) => moveLines(wall, lengths)), ...planLines(comparison, lengths)],
    },
    { title: "Cuts that changed", lines: onWalls((wall) => cutLines(wall, lengths)) },
    {
      title: "On the wall already",
      lines: onWalls(({ onWall }) => onWall.before.map((each) => onWallWords(each))),
    },
    { title: "Findings", lines: findingLines(comparison, several) },
    { title: "Smallest cut, cut pieces", lines: onWalls((wall) => readingLines(wall, lengths)) },
    {
      title: "Alignments",
      lines: onWalls((wall) => alignmentWords(wall.alignments)),
    },
    { title: "Quantities", lines: quantityWords(comparison.quantities, comparison.units.after) },
    { title: "Pieces", lines: onWalls((wall) => pieceLines(wall, lengths)) },
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
  const lengths = new Lengths(units);
  const lines = [...moveLines(wall, lengths), ...pieceLines(wall, lengths)];
  return lines.length > 0 ? lines : ["nothing changed"];
}

function named({ name }: WallComparison, line: string, several: boolean): string {
  return several ? `${name.after ?? name.before!}: ${line}` : line;
}

function planLines({ parts, facts }: Comparison, lengths: Lengths): string[] {
  return [
    ...parts.map((part) => partWords(part)),
    ...facts.map((fact) => factWords(fact, lengths)),
  ];
}

function moveLines(wall: WallComparison, lengths: Lengths): string[] {
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
    ...starts.map((fact) => factWords(fact, lengths)),
    ...(shift ? [shiftWords(shift, lengths)] : []),
    ...wall.parts.map((part) => partWords(part)),
    ...rest.map((fact) => factWords(fact, lengths)),
  ];
}

/** The name of a surface inside an opening has its wall's and its opening's before it; a renamed one is told of those. */
function isInsideName(name: string): boolean {
  return name.includes(".");
}

function surfaceWord(name: string): string {
  return isInsideName(name) ? "surface" : "wall";
}

function cutLines(wall: WallComparison, lengths: Lengths): string[] {
  if (isWhole(wall)) return [];
  const { recut, fresh, gone } = wall.pieces;
  const most = <T extends { readonly count: number }>(groups: readonly T[]) =>
    [...groups].sort((a, b) => b.count - a.count);
  const { pairs, rest } = exchanges(most(recut));
  return [
    ...pairs.map((pair) => exchangeWords(pair, lengths)),
    ...rest.map((group) => recutWords(group, lengths)),
    ...most(fresh.filter(({ piece }) => piece.cut !== "none")).map((group) =>
      apartWords(group, "new", lengths),
    ),
    ...most(gone.filter(({ piece }) => piece.cut !== "none")).map((group) =>
      apartWords(group, "gone", lengths),
    ),
  ];
}

/** Whether the wall came, went or is laid anew as a whole, so that its pieces need no list. */
function isWhole({ name, anew, reading }: WallComparison): boolean {
  return anew || name.before === null || name.after === null || !reading.before || !reading.after;
}

function findingLines({ findings, walls }: Comparison, several: boolean): string[] {
  const nowCalled = new Map(
    walls.map(({ name }) => [name.before ?? name.after, name.after ?? name.before]),
  );
  const rank = (line: string) => ORDER.findIndex((word) => line.startsWith(word));
  return findings
    .map((finding) => {
      const wall = (finding.after ?? finding.before)?.wall;
      return { wall: wall && (nowCalled.get(wall) ?? wall), line: findingWords(finding) };
    })
    .sort((a, b) => rank(a.line) - rank(b.line))
    .map(({ wall, line }) => (several && wall ? `${wall}: ${line}` : line));
}

const ORDER = ["new", "no longer waived", "gone", "waived", "still"];

function readingLines({ reading }: WallComparison, lengths: Lengths): string[] {
  const { before, after } = reading;
  return before && after ? readingWords({ before, after }, lengths) : [];
}

function pieceLines(wall: WallComparison, lengths: Lengths): string[] {
  const { moved, recut, fresh, gone } = wallTotals(wall);
  if (wall.anew) return [`laid anew: ${gone} pieces before, ${fresh} now`];
  if (isWhole(wall)) return [];
  return [
    ...(moved > 0 ? [movedWords(wall.pieces.moved, lengths)] : []),
    ...(recut > 0 ? [`${counted(recut, "piece")} cut differently`] : []),
    ...(fresh > 0 ? [`${counted(fresh, "piece")} new`] : []),
    ...(gone > 0 ? [`${counted(gone, "piece")} gone`] : []),
  ];
}
