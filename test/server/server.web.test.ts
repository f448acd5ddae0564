import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { runInNewContext } from "node:vm";

const PROGRAM = new URL("../../dist/server.js", import.meta.url);

interface Message {
  readonly id?: number;
  readonly result?: { readonly capabilities?: { readonly hoverProvider?: boolean } };
  readonly method?: string;
  readonly params?: { readonly diagnostics?: readonly { readonly code: string }[] };
}

describe("the server in a worker", () => {
  it("runs as built, where there is no Node, and tells of a document", async () => {
    const told: Message[] = [];
    let look = (): void => undefined;
    // What a worker has, and nothing of Node's.
    const scope: Record<string, unknown> = {
      console,
      setTimeout,
      clearTimeout,
      performance,
      TextDecoder,
      TextEncoder,
      URL,
      queueMicrotask,
      importScripts: () => undefined,
      addEventListener: () => undefined,
      postMessage: (message: Message) => {
        told.push(message);
        look();
      },
    };
    scope.self = scope;
    runInNewContext(readFileSync(PROGRAM, "utf8"), scope);
    await Promise.resolve();
    const until = async (wanted: (message: Message) => boolean): Promise<Message> => {
      while (!told.some(wanted)) await new Promise<void>((resolve) => (look = resolve));
      return told.find(wanted)!;
    };
    const send = (message: object): void =>
      (scope.onmessage as (event: object) => void)({ data: { jsonrpc: "2.0", ...message } });
    send({ id: 1, method: "initialize", params: { processId: null, capabilities: {} } });
    const { result } = await until(({ id }) => id === 1);
    assert.equal(result?.capabilities?.hoverProvider, true);
    const textDocument = {
      uri: "vscode-vfs://x/a.tileplan",
      languageId: "tileplan",
      version: 1,
      text: "bed (\n",
    };
    send({ method: "textDocument/didOpen", params: { textDocument } });
    const { params } = await until(({ method }) => method === "textDocument/publishDiagnostics");
    assert.equal(params?.diagnostics?.[0]?.code, "syntax/unexpected");
  });
});
