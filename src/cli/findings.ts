import type { Diagnostic } from "../model/index.js";

/**
 * The findings of one run in the order of reading: by file in the order that the files came, then by
 * place. What several plans say of a file that they share is told once.
 */
export function inReadingOrder(
  diagnostics: readonly Diagnostic[],
  files: readonly string[],
): readonly Diagnostic[] {
  const order = new Set([...files, ...diagnostics.map((found) => found.file)]);
  const rank = new Map([...order].map((file, index) => [file, index]));
  const once = new Map(diagnostics.map((found) => [identity(found), found]));
  return [...once.values()].sort(
    (a, b) => rank.get(a.file)! - rank.get(b.file)! || comparePlaces(a, b),
  );
}

function identity({ file, range, code, message }: Diagnostic): string {
  return JSON.stringify([file, range, code, message]);
}

function comparePlaces(a: Diagnostic, b: Diagnostic): number {
  const [from, to] = [a.range.start, b.range.start];
  return from.line - to.line || from.character - to.character;
}
