import assert from "node:assert/strict";
import type { PublishDiagnosticsParams } from "vscode-languageserver/node";
import { clientFiles } from "../../src/server/client-files.js";
import type { FindPlans } from "../../src/server/protocol.js";
import { clientInProcess, connectionInProcess } from "./in-process.js";

const URI = "vscode-vfs://github/plans/back.tileplan";
const TEXT = 'use "stock.tileplan"\nwall a {\n  size 60 x 48\n  lay t {\n  }\n}\n'.replace("|", "");

/** What is told of a plan that uses a file which only the client can read. */
async function codesWith(files: boolean): Promise<(string | number | undefined)[]> {
  const client = clientInProcess();
  const asked: string[] = [];
  client.onRequest("gaugelath/readFile", ({ uri }: { uri: string }) => {
    asked.push(uri);
    return "tile t {\n  face 6 x 3\n  thickness 1/4\n}\n";
  });
  const told = new Promise<PublishDiagnosticsParams>((resolve) => {
    client.onNotification("textDocument/publishDiagnostics", resolve);
  });
  const initializationOptions = { files };
  await client.sendRequest("initialize", {
    processId: null,
    capabilities: {},
    initializationOptions,
  });
  const textDocument = { uri: URI, languageId: "tileplan", version: 1, text: TEXT };
  await client.sendNotification("textDocument/didOpen", { textDocument });
  const { diagnostics } = await told;
  client.dispose();
  assert.deepEqual(asked, files ? ["vscode-vfs://github/plans/stock.tileplan"] : []);
  return diagnostics.map(({ code }) => code);
}

describe("files by way of the client", () => {
  it("are asked of one that says it reads them, before anything is told", async () => {
    assert.ok(!(await codesWith(true)).includes("plan/use-missing"));
  });

  it("are missing where the client says nothing of them", async () => {
    assert.ok((await codesWith(false)).includes("plan/use-missing"));
  });

  it("are looked for by it, and are none where it fails or doesn't know the question", async () => {
    const { server, client } = connectionInProcess();
    server.listen();
    const files = clientFiles(server, () => true);
    assert.deepEqual([await files.read("a:/1"), await files.find(["a:/"], 7)], [null, []]);
    client.onRequest("gaugelath/findPlans", ({ folders, most }: FindPlans) => [
      ...folders,
      `${most} at most`,
    ]);
    assert.deepEqual(await files.find(["a:/"], 7), ["a:/", "7 at most"]);
    const unable = clientFiles(server, () => false);
    assert.deepEqual(await unable.find(["a:/"], 7), []);
  });
});
