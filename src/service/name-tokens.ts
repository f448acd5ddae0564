import type { SourceRange } from "../model/index.js";
import type { DocumentState } from "./document-state.js";
import type { NameIndex } from "./file-names.js";
import type { NameKind } from "./names.js";

/** A name and what it is: what the grammar of an editor can't tell, since only declarations say it. */
export interface NameToken {
  readonly kind: NameKind;
  readonly declares: boolean;
  readonly range: SourceRange;
}

/** A text with more names than this is coloured in part. */
const MOST_TOKENS = 50_000;

/** The names of a text that mean something, in its order; unknown ones are left as they are. */
export function nameTokens(
  state: DocumentState,
  index: NameIndex,
  within?: SourceRange,
): NameToken[] {
  const file = index.ofDocument(state);
  const { lines } = state.tree;
  const from = within ? lines.offset(within.start) : 0;
  const to = within ? lines.offset(within.end) : Infinity;
  const known = new Map<string, boolean>();
  const isKnown = (name: (typeof file.names)[number]): boolean => {
    if (name.declares) return true;
    const key = `${name.kind} ${name.wall ?? ""} ${name.word.text}`;
    const answer = known.get(key) ?? index.declaringFile(file, name) !== null;
    known.set(key, answer);
    return answer;
  };
  return file.names
    .filter(({ word }) => word.end > from && word.start < to)
    .filter(isKnown)
    .slice(0, MOST_TOKENS)
    .map(({ kind, declares, word }) => ({ kind, declares, range: lines.range(word) }));
}
