import { PassThrough } from "node:stream";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import {
  createConnection,
  createProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import { startServer } from "../../src/server/start-server.js";
import { exampleText } from "../support/examples.js";
import type { Bar } from "./table.js";

const URI = "file:///plans/memory.tileplan";
/** Until then V8 still learns the code: its notes grow by two megabytes, and then no more. */
const WARM = 2000;
const EDITS = 1000;
const MB = 1024 * 1024;
/** A version that is kept holds over 0.1 MB: of a thousand kept ones this is less than a hundredth. */
const NOISE_MB = 1;

/** What the server holds after edits that each were solved, told of, hovered and drawn. */
export async function benchServerMemory(): Promise<{ bars: Bar[]; note: string }> {
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  startServer(
    createConnection(toServer, toClient),
    (client) => client,
    () => Promise.reject(new Error("Nothing is printed here")),
  );
  const client = createProtocolConnection(
    new StreamMessageReader(toClient),
    new StreamMessageWriter(toServer),
  );
  let told: (version: number) => void = () => undefined;
  client.onNotification("textDocument/publishDiagnostics", (each: PublishDiagnosticsParams) =>
    told(each.version ?? 0),
  );
  client.onRequest("workspace/configuration", ({ items }: { items: unknown[] }) =>
    items.map(() => ({ debounce: 0 })),
  );
  client.listen();
  const capabilities = { workspace: { configuration: true } };
  await client.sendRequest("initialize", { processId: null, capabilities });
  const text = exampleText("niche-wall.tileplan");
  const textDocument = { uri: URI, languageId: "tileplan", version: 0, text };
  await client.sendNotification("textDocument/didOpen", { textDocument });
  await client.sendNotification("gaugelath/watchPicture", { uri: URI, watching: true });

  const edit = async (version: number): Promise<void> => {
    const isTold = new Promise<void>((resolve) => {
      told = (each) => each === version && resolve();
    });
    const changed = text.replace("joint 2", `joint ${2 + (version % 5)}`);
    await client.sendNotification("textDocument/didChange", {
      textDocument: { uri: URI, version },
      contentChanges: [{ text: changed }],
    });
    const at = { textDocument: { uri: URI }, position: { line: 13, character: 6 } };
    await client.sendRequest("textDocument/hover", at);
    await client.sendRequest("textDocument/semanticTokens/full", at);
    await isTold;
  };
  for (let version = 1; version <= WARM; version++) await edit(version);
  const before = heapInMb();
  for (let version = WARM + 1; version <= WARM + EDITS; version++) await edit(version);
  const after = heapInMb();
  client.dispose();
  const note = `server heap: ${before.toFixed(1)} MB after ${WARM} edits, ${after.toFixed(1)} MB after ${EDITS} more`;
  const name = `server memory, growth in ${EDITS} edits`;
  return {
    bars: [{ name, found: after - before, limit: NOISE_MB, sense: "at most", unit: "MB" }],
    note,
  };
}

function heapInMb(): number {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc") as () => void;
  collect();
  collect();
  return process.memoryUsage().heapUsed / MB;
}
