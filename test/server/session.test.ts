import assert from "node:assert/strict";
import { CancellationTokenSource } from "vscode-languageserver/node";
import { exampleText } from "../support/examples.js";
import { mutate } from "../support/mutate.js";
import { randomFrom } from "../support/random.js";
import { TestClient } from "./client.js";

const URI = "file:///plans/session.tileplan";
const textDocument = { uri: URI };

/** The position of an offset in a text with plain line ends. */
function positionOf(text: string, offset: number): { line: number; character: number } {
  const before = text.slice(0, offset);
  const line = before.split("\n").length - 1;
  return { line, character: offset - (before.lastIndexOf("\n") + 1) };
}

/** An insertion as an editor sends it. */
function insertion(text: string, offset: number, typed: string): unknown {
  const at = positionOf(text, offset);
  return { range: { start: at, end: at }, text: typed };
}

describe("a session of typing, with all that editors do", () => {
  let client: TestClient;
  beforeEach(async () => {
    client = new TestClient();
    await client.start();
  });
  afterEach(async () => {
    assert.equal(await client.stop(), 0);
  });

  it("ends with the diagnostics of the text as it was typed, key by key", async () => {
    const whole = exampleText("niche-wall.tileplan");
    let text = "";
    let version = 1;
    await client.open(URI, text);
    const asked: Promise<unknown>[] = [];
    for (const key of whole) {
      await client.change(URI, ++version, insertion(text, text.length, key));
      text += key;
      const position = positionOf(text, text.length);
      // What an editor asks at every key, of which it waits for nothing.
      const methods = ["completion", "hover", "documentSymbol", "foldingRange"];
      const method = methods[version % methods.length]!;
      const params = { textDocument, position };
      asked.push(client.request(`textDocument/${method}`, params).catch((error: unknown) => error));
    }
    const answers = await Promise.all(asked);
    for (const answer of answers) {
      if (answer instanceof Error) assert.match(answer.message, /text has changed/);
    }
    const typed = await client.diagnostics(URI, version);
    const other = "file:///plans/whole.tileplan";
    await client.open(other, whole);
    assert.deepEqual(typed, await client.diagnostics(other, 1));
    // The newest text wins: versions are told in order, none twice.
    const versions = client.published.flatMap((told) =>
      told.uri === URI && told.version !== undefined ? [told.version] : [],
    );
    assert.deepEqual(
      versions,
      [...new Set(versions)].sort((a, b) => a - b),
    );
  });

  it("takes garbage: mutated texts, changes out of range, requests of unknown kinds and documents", async () => {
    const random = randomFrom(11);
    const whole = exampleText("three-walls.tileplan");
    await client.open(URI, whole);
    let version = 1;
    for (let i = 0; i < 60; i++) {
      await client.change(URI, ++version, mutate(whole, random));
      const position = { line: random.integer(0, 90), character: random.integer(0, 90) };
      const at = { textDocument, position };
      const range = { start: position, end: position };
      await Promise.all([
        client.request("textDocument/hover", at),
        client.request("textDocument/completion", at),
        client.request("textDocument/definition", at),
        client.request("textDocument/prepareRename", at),
        client.request("textDocument/selectionRange", { textDocument, positions: [position] }),
        client.request("textDocument/codeAction", {
          textDocument,
          range,
          context: { diagnostics: [] },
        }),
        client.request("textDocument/formatting", at),
        client.request("textDocument/semanticTokens/full", at),
        client.request("textDocument/inlayHint", { textDocument, range }),
      ]);
    }
    const far = { start: { line: 9999, character: 9 }, end: { line: 99_999, character: 0 } };
    await client.change(URI, ++version, { range: far, text: '\u0000🧱 }}} "' });
    const at = { textDocument: { uri: "file:///nowhere.tileplan" }, position: far.start };
    assert.equal(await client.request("textDocument/hover", at), null);
    await assert.rejects(client.request("gaugelath/nothing", {}), /Unhandled method/);
    await client.connection.sendNotification("gaugelath/nothing", { a: 1 });
    await client.connection.sendNotification("gaugelath/watchPicture", {
      uri: "x:y",
      watching: true,
    });
    await client.change(URI, ++version, whole);
    assert.ok(Array.isArray(await client.diagnostics(URI, version)));
  });

  it("drops what is called off, in any order, and answers the rest", async () => {
    await client.open(URI, exampleText("three-walls.tileplan"));
    await client.diagnostics(URI, 1);
    const position = { line: 13, character: 6 };
    const asked = Array.from({ length: 40 }, (_, i) => {
      const source = new CancellationTokenSource();
      const params = { textDocument, position, context: { includeDeclaration: true } };
      const method = i % 2 ? "textDocument/references" : "textDocument/hover";
      const answer = client.connection
        .sendRequest<unknown>(method, params, source.token)
        .then(() => "answered")
        .catch((error: unknown) => (error as Error).message);
      return { source, answer };
    });
    // Every third, the last first; then one that is answered already, and one that never was.
    for (let i = asked.length - 1; i >= 0; i -= 3) asked[i]!.source.cancel();
    const answers = await Promise.all(asked.map(({ answer }) => answer));
    asked[0]!.source.cancel();
    await client.connection.sendNotification("$/cancelRequest", { id: 987_654 });
    answers.forEach((answer, i) => {
      const calledOff = (asked.length - 1 - i) % 3 === 0;
      if (!calledOff) assert.equal(answer, "answered", `request ${i}`);
    });
    assert.ok(await client.request("textDocument/hover", { textDocument, position }));
  });

  it("takes a file of a megabyte, and edits in its middle", async function () {
    this.timeout(300_000);
    const wall = exampleText("back-wall.tileplan").replace(/^use .*$/m, "");
    const blocks: string[] = [exampleText("stock.tileplan")];
    for (let size = blocks[0]!.length, i = 0; size < 1_000_000; i++) {
      const block = wall
        .slice(wall.indexOf("wall back"))
        .replace("wall back", `wall back-${i}`)
        .replace(", sill", ", 44")
        .replace(
          "bond running 1/2",
          "bond stack\n    across tile centred on wall\n    up joint at 3",
        );
      blocks.push(block);
      size += block.length;
    }
    let text = blocks.join("\n");
    const started = performance.now();
    await client.open(URI, text);
    const symbols = await client.request<unknown[]>("textDocument/documentSymbol", {
      textDocument,
    });
    // A tile, a trim, saw, mortar, grout and sealant come before the walls.
    assert.equal(symbols.length, blocks.length - 1 + 6);
    const opened = performance.now() - started;
    const middle = text.indexOf("\n", text.length / 2);
    await client.change(URI, 2, insertion(text, middle, "\n# typed"));
    text = `${text.slice(0, middle)}\n# typed${text.slice(middle)}`;
    const folds = await client.request<unknown[]>("textDocument/foldingRange", { textDocument });
    assert.ok(folds.length > 0);
    const told = await client.diagnostics(URI, 2);
    console.log(
      `      ${text.length} characters, ${blocks.length - 1} walls: outline after ${Math.round(opened)} ms, all told after ${Math.round(performance.now() - started)} ms, ${told.length} diagnostics`,
    );
  });
});
