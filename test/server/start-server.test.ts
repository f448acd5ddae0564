import assert from "node:assert/strict";
import type {
  InitializeResult,
  ProtocolConnection,
  PublishDiagnosticsParams,
} from "vscode-languageserver/node";
import { FEATURES } from "../../src/server/features.js";
import type { FileSystem } from "../../src/server/file-system.js";
import { clientInProcess } from "./in-process.js";

/** Files in memory by their addresses. */
function filesOf(texts: ReadonlyMap<string, string>): FileSystem {
  return {
    read: (uri) => Promise.resolve(texts.get(uri) ?? null),
    find: () => Promise.resolve([...texts.keys()]),
  };
}

async function open(client: ProtocolConnection, uri: string, text: string): Promise<void> {
  const textDocument = { uri, languageId: "tileplan", version: 1, text };
  await client.sendNotification("textDocument/didOpen", { textDocument });
}

function nextTold(client: ProtocolConnection): Promise<PublishDiagnosticsParams> {
  return new Promise((resolve) => {
    client.onNotification("textDocument/publishDiagnostics", resolve);
  });
}

describe("the server's start", () => {
  it("takes a client that says nothing of itself, and tells all that it can do", async () => {
    const client = clientInProcess();
    const { capabilities } = await client.sendRequest<InitializeResult>("initialize", {
      processId: null,
      capabilities: {},
    });
    for (const feature of Object.keys(FEATURES)) assert.ok(feature in capabilities, feature);
    await client.sendNotification("initialized", {});
    client.dispose();
  });

  it("takes options of any shape", async () => {
    for (const initializationOptions of [null, 3, [], { files: "yes" }, { other: 1 }]) {
      const client = clientInProcess();
      const params = { processId: null, capabilities: {}, rootUri: null, initializationOptions };
      await client.sendRequest("initialize", params);
      client.dispose();
    }
  });

  it("takes the one folder that an older client names as what a plan may use", async () => {
    const codes = async (params: object): Promise<unknown[]> => {
      const texts = new Map([["file:///plans/stock.tileplan", "let gap = 1\n"]]);
      const client = clientInProcess(() => filesOf(texts));
      await client.sendRequest("initialize", { processId: null, capabilities: {}, ...params });
      await open(client, "file:///plans/rooms/a.tileplan", 'use "../stock.tileplan"\nbed gap\n');
      const { diagnostics } = await nextTold(client);
      client.dispose();
      return diagnostics.map(({ code }) => code);
    };
    assert.deepEqual(await codes({ rootUri: "file:///plans" }), []);
    assert.ok((await codes({})).length > 0);
  });

  it("looks at files again at each save where the client doesn't watch them", async () => {
    const texts = new Map([["file:///plans/b.tileplan", "let gap = 1\n"]]);
    const client = clientInProcess(() => filesOf(texts));
    await client.sendRequest("initialize", { processId: null, capabilities: {} });
    const uri = "file:///plans/a.tileplan";
    await open(client, uri, 'use "b.tileplan"\nbed gap\n');
    assert.deepEqual((await nextTold(client)).diagnostics, []);
    texts.clear();
    await client.sendNotification("textDocument/didSave", { textDocument: { uri } });
    const { diagnostics } = await nextTold(client);
    assert.ok(diagnostics.some(({ code }) => code === "plan/use-missing"));
    client.dispose();
  });
});
