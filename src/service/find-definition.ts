import type { Position, SourceRange } from "../model/index.js";
import type { DocumentState } from "./document-state.js";
import { declarationIn, type NameIndex } from "./file-names.js";
import { nameAt } from "./names.js";
import { usesOf } from "./used-files.js";

/** A stretch of a file. */
export interface FilePlace {
  readonly file: string;
  readonly range: SourceRange;
}

/** Where what is named at a place is declared; for the path of a `use`, the beginning of that file. */
export function findDefinition(
  state: DocumentState,
  index: NameIndex,
  position: Position,
): FilePlace | null {
  const offset = state.tree.lines.offset(position);
  const from = index.ofDocument(state);
  const name = nameAt(from.names, offset);
  if (name) {
    const file = index.declaringFile(from, name);
    const place = file && declarationIn(file, name);
    return file && place ? { file: file.file, range: file.lines.range(place.word) } : null;
  }
  const use = usesOf(state).find(
    ({ statement: { path } }) => path.start <= offset && offset <= path.end,
  );
  if (!use?.file || !index.of(use.file)) return null;
  const start = { line: 0, character: 0 };
  return { file: use.file, range: { start, end: start } };
}
