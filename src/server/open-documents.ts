import { type Connection, TextDocuments } from "vscode-languageserver";
import { TextDocument } from "vscode-languageserver-textdocument";
import type { PlanDocument } from "../service/index.js";
import { pathOf } from "./addresses.js";

/** An open text: the one that is changed in place, and its newest version as the service wants it. */
interface OpenText {
  readonly uri: string;
  readonly text: TextDocument;
  readonly plan: PlanDocument;
}

/** What is told of open documents. */
export interface DocumentEvents {
  readonly changed: (document: PlanDocument) => void;
  readonly opened: () => void;
  readonly saved: () => void;
  readonly closed: (document: PlanDocument) => void;
}

/** The documents that the client has open, kept by their incremental changes. */
export class OpenDocuments {
  readonly #texts = new TextDocuments<OpenText>({
    create: (uri, languageId, version, content) =>
      openText(TextDocument.create(uri, languageId, version, content)),
    update: ({ text }, changes, version) => openText(TextDocument.update(text, changes, version)),
  });

  constructor(connection: Connection, events: DocumentEvents) {
    this.#texts.onDidOpen(events.opened);
    this.#texts.onDidSave(events.saved);
    this.#texts.onDidChangeContent(({ document }) => events.changed(document.plan));
    this.#texts.onDidClose(({ document }) => events.closed(document.plan));
    this.#texts.listen(connection);
  }

  /** The newest version of a document; undefined when it isn't open. */
  newest(uri: string): PlanDocument | undefined {
    return this.#texts.get(uri)?.plan;
  }

  all(): PlanDocument[] {
    return this.#texts.all().map(({ plan }) => plan);
  }
}

function openText(text: TextDocument): OpenText {
  const { uri, version } = text;
  return { uri, text, plan: { uri, file: pathOf(uri), version, text: text.getText() } };
}
