import assert from "node:assert/strict";
import type { PublishDiagnosticsParams } from "vscode-languageserver/node";
import { clientInProcess } from "./in-process.js";

const URI = "file:///plans/a.tileplan";

describe("what is published", () => {
  it("is told once typing pauses, of the newest text alone", async () => {
    const client = clientInProcess();
    const told: PublishDiagnosticsParams[] = [];
    let tell = (): void => undefined;
    client.onNotification("textDocument/publishDiagnostics", (each: PublishDiagnosticsParams) => {
      told.push(each);
      tell();
    });
    client.onRequest("workspace/configuration", ({ items }: { items: unknown[] }) =>
      items.map(() => ({ debounce: 150 })),
    );
    const capabilities = { workspace: { configuration: true } };
    await client.sendRequest("initialize", { processId: null, capabilities });
    const textDocument = { uri: URI, languageId: "tileplan", version: 1, text: "bed \n" };
    const first = new Promise<void>((resolve) => (tell = resolve));
    await client.sendNotification("textDocument/didOpen", { textDocument });
    for (let version = 2; version <= 20; version++) {
      await client.sendNotification("textDocument/didChange", {
        textDocument: { uri: URI, version },
        contentChanges: [{ text: version === 20 ? "bed 1\n" : "bed (\n" }],
      });
    }
    await first;
    assert.deepEqual(
      told.map(({ version, diagnostics }) => [version, diagnostics.length]),
      [[20, 0]],
    );
    client.dispose();
  });
});
