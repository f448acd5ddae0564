import type { PlanDocument, Workspace } from "../service/index.js";
import { pathOf, uriOf } from "./addresses.js";
import type { FileSystem } from "./file-system.js";

/** A workspace with more plans than this is searched in part. */
export const MOST_FILES = 5_000;

/**
 * The texts that the service may ask for: those of open documents, and of files once they are read.
 * One that is not read yet counts as missing and is remembered, until `settle` reads it.
 */
export class KnownFiles implements Workspace {
  readonly #open = new Map<string, PlanDocument>();
  readonly #texts = new Map<string, string | null>();
  readonly #wanted = new Set<string>();
  /** Files that are being read; one that changes meanwhile is taken out, and read again. */
  readonly #reading = new Map<string, Promise<void>>();
  #folders: readonly string[] = [];
  /** Every plan of the workspace, once they were looked for. */
  #found: Set<string> | null = null;

  constructor(private readonly system: FileSystem) {}

  readonly read = (file: string): string | null => {
    const open = this.#open.get(file);
    if (open) return open.text;
    const text = this.#texts.get(file);
    if (text === undefined) this.#wanted.add(file);
    return text ?? null;
  };

  readonly rootOf = (file: string): string => {
    const holding = this.#folders.filter((folder) => file.startsWith(`${folder}/`));
    // Of folders in one another the outermost: a plan may use all that is open with it.
    const outermost = holding.sort((a, b) => a.length - b.length)[0];
    if (outermost !== undefined) return outermost;
    const slash = file.lastIndexOf("/");
    return slash < 0 ? (this.#folders[0] ?? file) : file.slice(0, slash);
  };

  readonly files = (): Iterable<string> => new Set([...this.#open.keys(), ...(this.#found ?? [])]);

  readonly uriOf = (file: string): string => this.#open.get(file)?.uri ?? uriOf(file);

  setFolders(uris: readonly string[]): void {
    this.#folders = uris.map((uri) => pathOf(uri).replace(/\/$/, ""));
    this.#found = null;
  }

  open(document: PlanDocument): void {
    this.#open.set(document.file, document);
  }

  /** A closed document's file is read again when it is next asked for. */
  close(document: PlanDocument): void {
    this.#open.delete(document.file);
    this.#texts.delete(document.file);
  }

  /** A file came, went or changed outside the editor. */
  changed(uri: string, exists: boolean): void {
    const file = pathOf(uri);
    this.#texts.delete(file);
    this.#reading.delete(file);
    if (exists) this.#found?.add(file);
    else this.#found?.delete(file);
  }

  /** Has every file read again, for a client that doesn't tell when one changes. */
  forgetAll(): void {
    this.#texts.clear();
    this.#found = null;
  }

  get hasWanted(): boolean {
    return this.#wanted.size > 0;
  }

  /** Reads what was asked for and not known. */
  async settle(): Promise<void> {
    const wanted = [...this.#wanted];
    this.#wanted.clear();
    await Promise.all(wanted.map((file) => this.#load(file)));
  }

  /** One that is being read already isn't asked for again. */
  #load(file: string): Promise<void> {
    const known = this.#reading.get(file);
    if (known) return known;
    const reading = this.system.read(uriOf(file)).then((text) => {
      if (this.#reading.get(file) !== reading) {
        this.#wanted.add(file);
        return;
      }
      this.#reading.delete(file);
      this.#texts.set(file, text);
    });
    this.#reading.set(file, reading);
    return reading;
  }

  /** Looks for all plans of the workspace and reads them, for what is asked of all of them. */
  async readAll(): Promise<void> {
    if (!this.#found) {
      const uris = await this.system.find(this.#folders.map(uriOf), MOST_FILES);
      this.#found = new Set(uris.map(pathOf));
    }
    for (const file of this.#found) this.read(file);
    await this.settle();
  }
}
