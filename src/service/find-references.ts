import type { Position } from "../model/index.js";
import type { DocumentState } from "./document-state.js";
import { BROUGHT, declarationIn, type FileNames, type NameIndex } from "./file-names.js";
import type { FilePlace } from "./find-definition.js";
import { isSameName, nameAt, type NamePlace } from "./names.js";
import type { Turns, Workspace } from "./workspace.js";

/** A file in which a thing is named, and every place there. */
export interface NamedIn {
  readonly file: FileNames;
  readonly places: readonly NamePlace[];
}

/** A thing with a name, and the files that name it. */
export interface NamedThing {
  /** The place that was asked about. */
  readonly name: NamePlace;
  /** null when nothing declares it. */
  readonly declaredIn: FileNames | null;
  readonly files: readonly NamedIn[];
}

/** After this many files others have their turn. */
const FILES_A_TURN = 20;

/** Every place that speaks of what is named at a place, in all files of the workspace; null where no name is. */
export async function findThing(
  state: DocumentState,
  index: NameIndex,
  position: Position,
  turns: Turns,
): Promise<NamedThing | null> {
  const from = index.ofDocument(state);
  const name = nameAt(from.names, state.tree.lines.offset(position));
  if (!name) return null;
  const declaredIn = index.declaringFile(from, name);
  if (!declaredIn || !BROUGHT.has(name.kind)) {
    const places = from.names.filter((place) => isSameName(place, name));
    return { name, declaredIn, files: [{ file: from, places }] };
  }
  const files: NamedIn[] = [];
  let walked = 0;
  for (const file of filesOf(state.workspace, from.file)) {
    if (++walked % FILES_A_TURN === 0) await turns.pause();
    if (turns.cancelled) return null;
    const names = file === from.file ? from : index.of(file);
    const places = names?.names.filter((place) => isSameName(place, name)) ?? [];
    if (!names || places.length === 0) continue;
    if (index.declaringFile(names, name)?.file === declaredIn.file)
      files.push({ file: names, places });
  }
  return { name, declaredIn, files };
}

/** The file that was asked about first, then all others. */
function filesOf({ files }: Workspace, first: string): Iterable<string> {
  return new Set([first, ...files()]);
}

/** The places of a thing, with or without its declaration. */
export function referencePlaces(thing: NamedThing, withDeclaration: boolean): FilePlace[] {
  const declaration = thing.declaredIn && declarationIn(thing.declaredIn, thing.name);
  return thing.files.flatMap(({ file, places }) =>
    places
      .filter((place) => withDeclaration || place !== declaration)
      .map(({ word }) => ({ file: file.file, range: file.lines.range(word) })),
  );
}
