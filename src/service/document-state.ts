import { type Outcome, runTree } from "../engine.js";
import type { SolvedPlan } from "../solver/index.js";
import { parse, type Source, type SyntaxTree } from "../language/index.js";
import type { PlanDocument } from "./document.js";
import type { Workspace } from "./workspace.js";

/** What one version of a text comes to, worked out when it is first asked for and then kept. */
export class DocumentState {
  #tree: SyntaxTree | undefined;
  #solved:
    { readonly outcome: Outcome; readonly read: ReadonlyMap<string, string | null> } | undefined;
  #before: SolvedPlan | undefined;

  /** `before`: the version before it, of which it may share walls. */
  constructor(
    readonly document: PlanDocument,
    readonly workspace: Workspace,
    before?: DocumentState,
  ) {
    this.#before = before?.latest;
  }

  /** What this version, or else the one before it, came to when it was solved last. */
  get latest(): SolvedPlan | undefined {
    return this.#solved?.outcome.solved ?? this.#before;
  }

  get tree(): SyntaxTree {
    return (this.#tree ??= parse(this.document.text));
  }

  /** The solved plan; solved again once a file that it uses has changed. */
  get outcome(): Outcome {
    this.prepare();
    return this.#solved!.outcome;
  }

  /** Solves the text, unless that is done. */
  prepare(): void {
    if (!this.#solved || !this.#isCurrent(this.#solved.read)) this.#solved = this.#solve();
  }

  /** The files that the text used when it was last solved, directly or through others, there or not. */
  get usedFiles(): readonly string[] {
    return this.#solved ? [...this.#solved.read.keys()] : [];
  }

  get root(): string {
    return this.workspace.rootOf(this.document.file);
  }

  #solve(): { outcome: Outcome; read: ReadonlyMap<string, string | null> } {
    const read = new Map<string, string | null>();
    const source: Source = {
      file: this.document.file,
      root: this.root,
      read: (file) => {
        const text = this.workspace.read(file);
        read.set(file, text);
        return text;
      },
    };
    const outcome = runTree(this.tree, source, this.latest);
    this.#before = undefined;
    return { outcome, read };
  }

  #isCurrent(read: ReadonlyMap<string, string | null>): boolean {
    for (const [file, text] of read) if (this.workspace.read(file) !== text) return false;
    return true;
  }
}

/** The states of documents, each as long as its document lives. */
export class DocumentStates {
  readonly #states = new WeakMap<PlanDocument, DocumentState>();
  /** Of each file the version that was asked for last. */
  readonly #latest = new Map<string, WeakRef<DocumentState>>();

  constructor(private readonly workspace: Workspace) {}

  of(document: PlanDocument): DocumentState {
    const known = this.#states.get(document);
    if (known) return known;
    const state = new DocumentState(document, this.workspace, this.latestOf(document.file));
    this.#states.set(document, state);
    this.#latest.set(document.file, new WeakRef(state));
    return state;
  }

  /** The state of the version of a file that was asked for last, as long as anybody has it. */
  latestOf(file: string): DocumentState | undefined {
    return this.#latest.get(file)?.deref();
  }
}
