import type { SourceRange } from "../model/index.js";

/** What the order of findings hangs on. */
interface Placed {
  readonly file: string;
  readonly range: SourceRange;
  readonly code: string;
  readonly message: string;
}

/**
 * The findings of one run in the order of reading: by file in the order that the files came, then by
 * place. What several plans say of a file that they share is told once.
 */
export function inReadingOrder<T extends Placed>(
  diagnostics: readonly T[],
  files: readonly string[],
): readonly T[] {
  const order = new Set([...files, ...diagnostics.map((found) => found.file)]);
  const rank = new Map([...order].map((file, index) => [file, index]));
  const once = new Map(diagnostics.map((found) => [identity(found), found]));
  return [...once.values()].sort(
    (a, b) => rank.get(a.file)! - rank.get(b.file)! || comparePlaces(a, b),
  );
}

function identity({ file, range, code, message }: Placed): string {
  return JSON.stringify([file, range, code, message]);
}

function comparePlaces(a: Placed, b: Placed): number {
  const [from, to] = [a.range.start, b.range.start];
  return from.line - to.line || from.character - to.character;
}
