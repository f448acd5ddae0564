import { parse, type SyntaxTree, usedPath } from "../language/index.js";
import type { DocumentState } from "./document-state.js";
import { type NameKind, type NamePlace, namesOf } from "./names.js";
import type { Workspace } from "./workspace.js";

/** What other files need to know of a file: its names and what it uses. */
export interface FileNames {
  readonly file: string;
  readonly text: string;
  readonly lines: SyntaxTree["lines"];
  readonly names: readonly NamePlace[];
  /** The files that it uses, in the order of its text. */
  readonly uses: readonly string[];
}

/** Kinds that come with a used file. */
export const BROUGHT: ReadonlySet<NameKind> = new Set(["let", "tile", "trim"]);

/** The names of the workspace's files, each read once for each of its texts. */
export class NameIndex {
  readonly #files = new Map<string, FileNames>();

  constructor(private readonly workspace: Workspace) {}

  /** null when there is no such file. */
  of(file: string): FileNames | null {
    const text = this.workspace.read(file);
    if (text === null) {
      this.#files.delete(file);
      return null;
    }
    const known = this.#files.get(file);
    if (known?.text === text) return known;
    return this.#keep(file, parse(text));
  }

  /** The same for an open document, whose tree is at hand. */
  ofDocument({ document, tree }: DocumentState): FileNames {
    const known = this.#files.get(document.file);
    if (known?.text === document.text) return known;
    return this.#keep(document.file, tree);
  }

  /**
   * The file that declares what a name of a file speaks of: the file itself, or the first that
   * brings it. null when none does.
   */
  declaringFile(from: FileNames, name: NamePlace): FileNames | null {
    return this.#declaring(from, name, new Set());
  }

  #declaring(from: FileNames, name: NamePlace, seen: Set<string>): FileNames | null {
    if (seen.has(from.file)) return null;
    seen.add(from.file);
    if (declarationIn(from, name)) return from;
    if (!BROUGHT.has(name.kind)) return null;
    for (const use of from.uses) {
      const used = this.of(use);
      const found = used && this.#declaring(used, name, seen);
      if (found) return found;
    }
    return null;
  }

  #keep(file: string, tree: SyntaxTree): FileNames {
    const root = this.workspace.rootOf(file);
    const uses = tree.statements.flatMap((statement) => {
      if (statement.kind !== "use") return [];
      const used = usedPath({ root }, file, statement.path.text);
      return used === null ? [] : [used];
    });
    const { text, lines } = tree;
    const names: FileNames = { file, text, lines, names: namesOf(tree), uses };
    this.#files.set(file, names);
    return names;
  }
}

/** Where a file declares what a name speaks of. */
export function declarationIn(
  { names }: FileNames,
  { kind, word, wall }: NamePlace,
): NamePlace | null {
  return (
    names.find(
      (place) =>
        place.declares &&
        place.kind === kind &&
        place.word.text === word.text &&
        place.wall === wall,
    ) ?? null
  );
}
