import type { Diagnostic, Severity, SourceRange } from "../model/index.js";
import type { Paint, Style } from "./colours.js";
import { harmless } from "./harmless.js";
import { linesOf, sourceLine } from "./source-line.js";

/** What a report needs to show findings at their places. */
export interface Sources {
  /** The text of a file, empty when there is none. */
  readonly textOf: (file: string) => string;
  /** A file's name for people. */
  readonly shownPath: (file: string) => string;
}

/** How many ids of pieces a finding names before it counts the rest. */
const PIECES_NAMED = 6;

/** Findings as a person reads them, the allowed ones with their reasons at the end. */
export function* textReport(
  diagnostics: readonly Diagnostic[],
  sources: Sources,
  paint: Paint,
): Generator<string> {
  const show = placeShower(sources, paint);
  for (const found of diagnostics.filter((each) => each.allowed === undefined)) {
    yield headline(found, sources, paint);
    yield show(found.file, found.range, found.severity);
    for (const note of notesOf(found)) yield `   ${paint("quiet", note.name)} ${note.text}\n`;
    for (const place of found.related ?? []) {
      const at = placeOf(place.file, place.range, sources);
      yield `   ${paint("quiet", "see")} ${paint("place", at)}: ${harmless(place.message)}\n`;
      yield show(place.file, place.range, "quiet");
    }
    yield "\n";
  }
  yield* allowedReport(diagnostics, sources, paint);
}

function* allowedReport(
  diagnostics: readonly Diagnostic[],
  sources: Sources,
  paint: Paint,
): Generator<string> {
  const allowed = diagnostics.filter((found) => found.allowed !== undefined);
  if (allowed.length === 0) return;
  yield `${paint("strong", "Allowed by the plan:")}\n`;
  for (const found of allowed) {
    const at = placeOf(found.file, found.range, sources);
    yield `${paint("place", at)}: ${harmless(found.message)} [${found.code}]\n`;
    yield `   ${paint("quiet", "reason")} ${harmless(found.allowed!)}\n`;
  }
  yield "\n";
}

function headline(found: Diagnostic, sources: Sources, paint: Paint): string {
  const at = paint("place", placeOf(found.file, found.range, sources));
  const severity = paint(found.severity, severityWord(found.severity));
  const message = paint("strong", harmless(found.message));
  return `${at}: ${severity}: ${message} ${paint("quiet", `[${found.code}]`)}\n`;
}

/** `file:line:column`, both from one; columns in UTF-16 units, as editors jump to them. */
function placeOf(file: string, range: SourceRange, sources: Sources): string {
  const { line, character } = range.start;
  return `${harmless(sources.shownPath(file))}:${line + 1}:${character + 1}`;
}

export function severityWord(severity: Severity): string {
  return severity === "information" ? "note" : severity;
}

function notesOf(found: Diagnostic): readonly { name: string; text: string }[] {
  const notes: { name: string; text: string }[] = [];
  const { wall, pieces = [], source } = found;
  if (pieces.length > 0) {
    const rest = pieces.length - PIECES_NAMED;
    const named = pieces.slice(0, PIECES_NAMED).join(", ") + (rest > 0 ? ` and ${rest} more` : "");
    notes.push({ name: pieces.length === 1 ? "piece" : "pieces", text: named });
  } else if (wall !== undefined) {
    notes.push({ name: "wall", text: wall });
  }
  if (source !== undefined) notes.push({ name: "source", text: harmless(source) });
  return notes;
}

/** Shows source lines, splitting each file into lines once. */
function placeShower(
  sources: Sources,
  paint: Paint,
): (file: string, range: SourceRange, style: Style) => string {
  const split = new Map<string, readonly string[]>();
  return (file, range, style) => {
    const lines = split.get(file) ?? linesOf(sources.textOf(file));
    split.set(file, lines);
    const line = sourceLine(lines, range);
    if (!line) return "";
    const number = String(line.number);
    const bar = paint("quiet", "|");
    const { indent, carets } = line.underline;
    return (
      ` ${paint("quiet", number)} ${bar} ${line.text}\n` +
      ` ${" ".repeat(number.length)} ${bar} ${indent}${paint(style, carets)}\n`
    );
  };
}
