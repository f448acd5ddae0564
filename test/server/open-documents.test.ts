import assert from "node:assert/strict";
import type { Connection } from "vscode-languageserver";
import { OpenDocuments } from "../../src/server/open-documents.js";
import type { PlanDocument } from "../../src/service/index.js";

type Handler = (params: unknown) => void;

describe("open documents", () => {
  it("are kept by their changes, each version a document of its own", () => {
    const handlers = new Map<string, Handler>();
    const connection = new Proxy(
      {},
      {
        get: (_target, name: string) => (handler: Handler) => {
          handlers.set(name, handler);
          return { dispose: () => undefined };
        },
      },
    ) as Connection;
    const seen: PlanDocument[] = [];
    const closed: PlanDocument[] = [];
    const documents = new OpenDocuments(connection, {
      opened: () => undefined,
      saved: () => undefined,
      changed: (document) => seen.push(document),
      closed: (document) => closed.push(document),
    });
    const uri = "file:///a.tileplan";
    handlers.get("onDidOpenTextDocument")!({
      textDocument: { uri, languageId: "tileplan", version: 1, text: "bed 1\n" },
    });
    const range = { start: { line: 0, character: 4 }, end: { line: 0, character: 5 } };
    handlers.get("onDidChangeTextDocument")!({
      textDocument: { uri, version: 2 },
      contentChanges: [
        { range, text: "22" },
        { range, text: "3" },
      ],
    });
    assert.deepEqual(
      seen.map(({ version, text }) => [version, text]),
      [
        [1, "bed 1\n"],
        [2, "bed 32\n"],
      ],
    );
    assert.equal(documents.newest(uri), seen[1]);
    handlers.get("onDidCloseTextDocument")!({ textDocument: { uri } });
    assert.deepEqual(closed, [seen[1]]);
    assert.deepEqual([documents.newest(uri), documents.all()], [undefined, []]);
  });
});
