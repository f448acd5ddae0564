import assert from "node:assert/strict";
import type { CodeAction } from "vscode-languageserver/node";
import { FEATURES } from "../../src/server/features.js";
import { clientInProcess } from "./in-process.js";

const URI = "file:///a.tileplan";

describe("the server's features", () => {
  it("are answered with nothing for a document that isn't open", async () => {
    const client = clientInProcess();
    await client.sendRequest("initialize", { processId: null, capabilities: {} });
    const textDocument = { uri: URI };
    const position = { line: 0, character: 0 };
    for (const method of ["hover", "completion", "definition", "documentSymbol", "foldingRange"]) {
      const answer = await client.sendRequest(`textDocument/${method}`, { textDocument, position });
      assert.equal(answer, null, method);
    }
    client.dispose();
  });

  it("give the kinds of code actions alone that are asked for", async () => {
    const client = clientInProcess();
    await client.sendRequest("initialize", { processId: null, capabilities: {} });
    const text =
      "units inhc\ntile t {\n  face 6 x 3\n  thickness 1/4\n}\nwall w {\n  size 60 x 47\n  lay t {\n    bond stack\n    joint 1/8\n  }\n}\n";
    const textDocument = { uri: URI, languageId: "tileplan", version: 1, text };
    await client.sendNotification("textDocument/didOpen", { textDocument });
    const range = { start: { line: 0, character: 0 }, end: { line: 12, character: 0 } };
    const kinds = async (only?: string[]): Promise<Set<string | undefined>> => {
      const context = { diagnostics: [], ...(only && { only }) };
      const actions = await client.sendRequest<CodeAction[]>("textDocument/codeAction", {
        textDocument: { uri: URI },
        range,
        context,
      });
      return new Set(actions.map(({ kind }) => kind));
    };
    assert.deepEqual(await kinds(), new Set(["quickfix", "refactor.rewrite"]));
    assert.deepEqual(await kinds(["quickfix"]), new Set(["quickfix"]));
    assert.deepEqual(await kinds(["refactor"]), new Set(["refactor.rewrite"]));
    assert.ok(FEATURES.codeActionProvider);
    client.dispose();
  });

  it("show no hints where the settings say so", async () => {
    const client = clientInProcess();
    let hints = true;
    client.onRequest("workspace/configuration", ({ items }: { items: unknown[] }) =>
      items.map(() => ({ hints })),
    );
    const capabilities = { workspace: { configuration: true } };
    await client.sendRequest("initialize", { processId: null, capabilities });
    const text =
      "tile t {\n  face 6 x 3\n  thickness 1/4\n}\nwall w {\n  size 60 x 47\n  lay t {\n    bond stack\n    joint 1/8\n  }\n}\n";
    const textDocument = { uri: URI, languageId: "tileplan", version: 1, text };
    await client.sendNotification("textDocument/didOpen", { textDocument });
    const range = { start: { line: 0, character: 0 }, end: { line: 12, character: 0 } };
    const shown = async (): Promise<number> => {
      const asked = { textDocument: { uri: URI }, range };
      return (await client.sendRequest<unknown[]>("textDocument/inlayHint", asked)).length;
    };
    assert.ok((await shown()) > 0);
    hints = false;
    await client.sendNotification("workspace/didChangeConfiguration", { settings: null });
    assert.equal(await shown(), 0);
    client.dispose();
  });
});
