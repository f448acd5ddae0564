import { isName } from "../language/index.js";
import type { Position, SourceRange } from "../model/index.js";
import type { DocumentState } from "./document-state.js";
import type { FileEdits } from "./edits.js";
import { declarationIn, type NameIndex } from "./file-names.js";
import { findThing, type NamedThing } from "./find-references.js";
import { nameAt } from "./names.js";
import type { Turns } from "./workspace.js";

/** The name at a place that can be renamed. */
export interface Renamable {
  readonly range: SourceRange;
  readonly name: string;
}

/** Edits in every file that names the thing, or why it can't be renamed. */
export type Renaming =
  | { readonly ok: true; readonly edits: readonly FileEdits[] }
  | { readonly ok: false; readonly message: string };

/** The name that a rename at this place would change, or null. */
export function findRenamable(
  state: DocumentState,
  index: NameIndex,
  position: Position,
): Renamable | null {
  const from = index.ofDocument(state);
  const name = nameAt(from.names, state.tree.lines.offset(position));
  if (!name || !index.declaringFile(from, name)) return null;
  return { range: from.lines.range(name.word), name: name.word.text };
}

/** Renames what is named at a place, in every file. */
export async function rename(
  state: DocumentState,
  index: NameIndex,
  position: Position,
  newName: string,
  turns: Turns,
): Promise<Renaming> {
  const fail = (message: string): Renaming => ({ ok: false, message });
  const wanted = newName.trim();
  if (!isName(wanted)) {
    return fail(
      `\`${newName}\` is no name: a letter, then letters, digits, \`_\` and \`-\`, is wanted`,
    );
  }
  const thing = await findThing(state, index, position, turns);
  if (!thing?.declaredIn) return fail("Nothing with a name stands here");
  if (wanted === thing.name.word.text) return { ok: true, edits: [] };
  if (thing.name.kind === "opening" && wanted === "wall") {
    return fail("An opening can't be called `wall`: `centred on wall` means the wall itself");
  }
  const taken = whereTaken(thing, wanted, index);
  if (taken !== null) return fail(`\`${wanted}\` is taken${taken}`);
  const edits = thing.files.map(({ file, places }) => ({
    file: file.file,
    edits: places.map(({ word }) => ({ range: file.lines.range(word), text: wanted })),
  }));
  return { ok: true, edits };
}

/** Where another thing of this kind has the new name already: it would then mean something else. */
function whereTaken({ name, files }: NamedThing, wanted: string, index: NameIndex): string | null {
  const renamed = { ...name, word: { ...name.word, text: wanted } };
  for (const { file } of files) {
    const owner = index.declaringFile(file, renamed);
    const place = owner && declarationIn(owner, renamed);
    if (!owner || !place) continue;
    const line = owner.lines.position(place.word.start).line + 1;
    return owner.file === files[0]!.file.file
      ? ` by line ${line}`
      : ` by line ${line} of ${owner.file.slice(owner.file.lastIndexOf("/") + 1)}`;
  }
  return null;
}
