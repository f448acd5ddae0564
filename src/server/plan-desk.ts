import { LSPErrorCodes, ResponseError } from "vscode-languageserver";
import { createService, type PlanDocument, type PlanService } from "../service/index.js";
import type { FileSystem } from "./file-system.js";
import { KnownFiles } from "./known-files.js";
import type { OpenDocuments } from "./open-documents.js";

/** Files that use files that use files: the language follows no longer chain. */
export const DEEPEST_USE = 60;

/** The service with the files that it needs: what is not read yet is read before a question is answered. */
export class PlanDesk {
  readonly files: KnownFiles;
  readonly service: PlanService;

  constructor(
    system: FileSystem,
    private readonly documents: () => OpenDocuments,
  ) {
    this.files = new KnownFiles(system);
    this.service = createService(this.files);
  }

  /**
   * The newest version of a document with all that it uses at hand. Throws ContentModified when a newer
   * version came while files were read: whoever asked will ask again.
   */
  async ready(uri: string): Promise<PlanDocument | null> {
    const document = this.documents().newest(uri);
    if (!document) return null;
    for (let depth = 0; depth < DEEPEST_USE; depth++) {
      this.service.prepare(document);
      if (!this.files.hasWanted) break;
      await this.files.settle();
      if (this.documents().newest(uri) !== document) throw contentModified();
    }
    return document;
  }

  /** The newest version of a document, whether the files that it uses are read or not. */
  newest(uri: string): PlanDocument | undefined {
    return this.documents().newest(uri);
  }

  /** Reads all plans of the workspace. Throws ContentModified as `ready` does. */
  async readAll(document: PlanDocument): Promise<void> {
    await this.files.readAll();
    if (this.newest(document.uri) !== document) throw contentModified();
  }

  /** The open documents that use a file, directly or through others. */
  usersOf(file: string): PlanDocument[] {
    return this.documents()
      .all()
      .filter(
        (document) => document.file !== file && this.service.usedFiles(document).includes(file),
      );
  }
}

export function contentModified(): ResponseError {
  return new ResponseError(LSPErrorCodes.ContentModified, "The text has changed meanwhile");
}
