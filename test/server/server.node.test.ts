import assert from "node:assert/strict";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import type {
  CodeAction,
  CompletionItem,
  DocumentSymbol,
  Hover,
  InlayHint,
  Location,
  SemanticTokens,
  TextEdit,
  WorkspaceEdit,
} from "vscode-languageserver/node";
import type { PictureNotice, SpotAnswer } from "../../src/server/protocol.js";
import { exampleText } from "../support/examples.js";
import { TestClient } from "./client.js";

const URI = "file:///plans/back.tileplan";
const WHOLE = { start: { line: 0, character: 0 }, end: { line: 1000, character: 0 } };
const textDocument = { uri: URI };
/** Of the plan of faults: `lay field`. */
const LAY_LINE = exampleText("faults.tileplan").split("\n").indexOf("  lay field {");

describe("the server, over stdio", () => {
  let client: TestClient;
  beforeEach(() => {
    client = new TestClient();
  });
  afterEach(async () => {
    assert.equal(await client.stop(), 0);
  });

  it("tells what is wrong with a document as it opens and as it changes", async () => {
    await client.start();
    await client.open(URI, "wall back {\n  size 60 x\n}\n");
    const [first] = await client.diagnostics(URI, 1);
    assert.equal(first?.code, "syntax/unexpected");
    await client.change(URI, 2, {
      range: { start: { line: 1, character: 11 }, end: { line: 1, character: 11 } },
      text: " 96",
    });
    assert.deepEqual(await client.diagnostics(URI, 2), []);
  });

  it("tells an example's faults in order, with links to sources, and none once it is closed", async () => {
    await client.start();
    await client.open(URI, exampleText("faults.tileplan"));
    const told = await client.diagnostics(URI, 1);
    assert.ok(told.length > 10);
    const lines = told.map(({ range }) => range.start.line);
    assert.deepEqual(
      lines,
      [...lines].sort((a, b) => a - b),
    );
    const narrow = told.find(({ code }) => code === "joint/too-narrow");
    const address = "https://tileletter.com/what-is-minimum-grout-joint";
    assert.equal(narrow?.codeDescription?.href, address);
    await client.close(URI);
    await client.until(({ uri, version }) => uri === URI && version === undefined);
  });

  it("answers every feature", async () => {
    await client.start();
    await client.open(URI, exampleText("faults.tileplan"));
    const diagnostics = await client.diagnostics(URI, 1);
    const position = { line: 24, character: 6 };
    const at = { textDocument, position };

    const hover = await client.request<Hover>("textDocument/hover", at);
    assert.match((hover.contents as { value: string }).value, /\*\*wall first\*\*/);
    const items = await client.request<CompletionItem[]>("textDocument/completion", {
      textDocument,
      position: { line: 2, character: 6 },
    });
    assert.ok(items.some(({ label }) => label === "inch"));
    const symbols = await client.request<DocumentSymbol[]>("textDocument/documentSymbol", at);
    assert.ok(symbols.some(({ name }) => name === "second"));
    const folds = await client.request<unknown[]>("textDocument/foldingRange", at);
    assert.ok(folds.length > 4);
    const selections = await client.request<{ parent?: unknown }[]>("textDocument/selectionRange", {
      textDocument,
      positions: [position],
    });
    assert.ok(selections[0]?.parent);
    const tokens = await client.request<SemanticTokens>("textDocument/semanticTokens/full", at);
    assert.ok(tokens.data.length > 0 && tokens.data.length % 5 === 0);
    const hints = { textDocument, range: WHOLE };
    for (const { label } of await client.request<InlayHint[]>("textDocument/inlayHint", hints)) {
      assert.match(
        label as string,
        /^# \d+ (needed|to come of \d+|cuts?)/,
        "nothing is left to the solver",
      );
    }
    assert.deepEqual(await client.request<TextEdit[]>("textDocument/formatting", at), []);

    const joint = diagnostics.find(({ code }) => code === "joint/too-narrow")!;
    const actions = await client.request<CodeAction[]>("textDocument/codeAction", {
      textDocument,
      range: joint.range,
      context: { diagnostics: [joint] },
    });
    const widen = actions.find(({ title }) => title.startsWith("Widen the joint"));
    assert.deepEqual(widen?.diagnostics, [joint]);
    assert.equal(widen.isPreferred, true);

    const use = { textDocument, position: { line: LAY_LINE, character: 8 } };
    const definition = await client.request<Location>("textDocument/definition", use);
    assert.equal(definition.uri, URI);
    const references = await client.request<Location[]>("textDocument/references", {
      ...use,
      context: { includeDeclaration: true },
    });
    assert.ok(references.length >= 2);
    const renamed = await client.request<WorkspaceEdit>("textDocument/rename", {
      ...use,
      newName: "subway",
    });
    assert.equal(renamed.changes?.[URI]?.length, references.length);
    const taken = client.request("textDocument/rename", { ...use, newName: "long" });
    await assert.rejects(taken, /taken/);
  });

  it("sends pictures of a watched plan, and reads spots of them", async () => {
    const pictures: PictureNotice[] = [];
    let tell = (): void => undefined;
    client.connection.onNotification("gaugelath/picture", (picture: PictureNotice) => {
      pictures.push(picture);
      tell();
    });
    const next = (): Promise<void> => new Promise((resolve) => (tell = resolve));
    await client.start();
    await client.open(URI, exampleText("niche-wall.tileplan"));
    const first = next();
    await client.connection.sendNotification("gaugelath/watchPicture", {
      uri: URI,
      watching: true,
    });
    await first;
    assert.equal(pictures[0]!.version, 1);
    assert.deepEqual(
      pictures[0]!.walls.map(({ name }) => name),
      ["north"],
    );
    const question = { uri: URI, version: 1, wall: "north", x: 1200, y: -150 };
    const spot = await client.request<SpotAnswer>("gaugelath/spot", question);
    assert.equal(spot?.piece, "north/1/3");
    const stale = await client.request<SpotAnswer>("gaugelath/spot", { ...question, version: 9 });
    assert.equal(stale, null);
    const second = next();
    await client.change(URI, 2, exampleText("niche-wall.tileplan").replace("joint 2", "joint 3"));
    while (pictures.at(-1)!.version !== 2) await second;
  });

  it("shows hints unless the settings say otherwise", async () => {
    await client.start();
    await client.open(URI, exampleText("back-wall.tileplan").replace(/use .*/, ""));
    const text =
      exampleText("stock.tileplan") + exampleText("back-wall.tileplan").replace(/^use .*$/m, "");
    await client.change(URI, 2, text.replace(/units inch/, ""));
    const asked = { textDocument, range: WHOLE };
    const [hint] = await client.request<InlayHint[]>("textDocument/inlayHint", asked);
    assert.match(hint?.label as string, /^# chosen: /);
    await client.configure({ hints: false });
    assert.deepEqual(await client.request<InlayHint[]>("textDocument/inlayHint", asked), []);
  });
});

describe("the server with files", () => {
  let folder: string;
  let client: TestClient;
  const uriIn = (name: string): string => pathToFileURL(path.join(folder, name)).toString();

  beforeEach(() => {
    folder = mkdtempSync(path.join(tmpdir(), "gaugelath plans "));
    mkdirSync(path.join(folder, "rooms"));
    writeFileSync(path.join(folder, "stock.tileplan"), exampleText("stock.tileplan"));
    client = new TestClient();
  });
  afterEach(async () => {
    assert.equal(await client.stop(), 0);
    rmSync(folder, { recursive: true });
  });

  it("reads what a plan uses, follows its change, its loss and its return", async () => {
    await client.start(pathToFileURL(folder).toString());
    const uri = uriIn("rooms/back.tileplan");
    const text =
      'use "../stock.tileplan"\nwall a {\n  size 60 x 47\n  lay pressed {\n    bond stack\n    joint 1/16\n  }\n}\n';
    await client.open(uri, text);
    const known = await client.diagnostics(uri, 1);
    assert.ok(!known.some(({ code }) => String(code).startsWith("plan/")));

    const watched = async (type: number): Promise<void> => {
      const changes = [{ uri: uriIn("stock.tileplan"), type }];
      await client.connection.sendNotification("workspace/didChangeWatchedFiles", { changes });
    };
    const toldThat = (code: string, wanted: boolean) =>
      client.until(
        (told) =>
          told.uri === uri && told.diagnostics.some((each) => each.code === code) === wanted,
      );
    rmSync(path.join(folder, "stock.tileplan"));
    await watched(3);
    await toldThat("plan/use-missing", true);
    client.published.length = 0;
    writeFileSync(path.join(folder, "stock.tileplan"), exampleText("stock.tileplan"));
    await watched(1);
    await toldThat("plan/use-missing", false);

    // The text in the editor counts, not what is on the disk.
    client.published.length = 0;
    await client.open(uriIn("stock.tileplan"), "units inch\n");
    await toldThat("plan/name-unknown", true);
    client.published.length = 0;
    await client.close(uriIn("stock.tileplan"));
    await toldThat("plan/name-unknown", false);
  });

  it("finds and renames a tile in files that no editor has open", async () => {
    writeFileSync(
      path.join(folder, "rooms", "other.tileplan"),
      'use "../stock.tileplan"\nwall a {\n  lay pressed {\n  }\n}\n',
    );
    await client.start(pathToFileURL(folder).toString());
    const uri = uriIn("stock.tileplan");
    await client.open(uri, exampleText("stock.tileplan"));
    const at = { textDocument: { uri }, position: { line: 3, character: 6 } };
    const renamed = await client.request<WorkspaceEdit>("textDocument/rename", {
      ...at,
      newName: "white",
    });
    assert.deepEqual(
      Object.keys(renamed.changes ?? {}).sort(),
      [uri, uriIn("rooms/other.tileplan")].sort(),
    );
  });
});
