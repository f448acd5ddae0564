import assert from "node:assert/strict";
import * as vscode from "vscode";
import { findingOf, noFindingOf } from "../findings.js";
import { closeAll, openPlan, openText, planUri, rangeOf } from "../plans.js";
import { until } from "../until.js";

const run = vscode.commands.executeCommand;

/** Somewhere inside a text, for questions about it. */
function inside(document: vscode.TextDocument, text: string, offset = 1): vscode.Position {
  return rangeOf(document, text).start.translate(0, offset);
}

async function hoverAt(document: vscode.TextDocument, text: string): Promise<string> {
  return until(`a hover over ${text}`, async () => {
    const at = inside(document, text);
    const hovers = await run<vscode.Hover[]>("vscode.executeHoverProvider", document.uri, at);
    const parts = hovers.flatMap(({ contents }) => contents as vscode.MarkdownString[]);
    return parts.length > 0 && parts.map(({ value }) => value).join("\n");
  });
}

async function completionsAt(
  document: vscode.TextDocument,
  at: vscode.Position,
): Promise<vscode.CompletionItem[]> {
  const list = await run<vscode.CompletionList>(
    "vscode.executeCompletionItemProvider",
    document.uri,
    at,
  );
  return list.items.filter(({ kind }) => kind !== vscode.CompletionItemKind.Text);
}

function labels(items: readonly vscode.CompletionItem[]): string[] {
  return items.map(({ label }) => (typeof label === "string" ? label : label.label));
}

/** The fixes that the lamp offers for a finding. */
async function fixesOf(
  uri: vscode.Uri,
  finding: vscode.Diagnostic,
): Promise<readonly vscode.CodeAction[]> {
  const { QuickFix } = vscode.CodeActionKind;
  return run("vscode.executeCodeActionProvider", uri, finding.range, QuickFix.value);
}

describe("what the editor knows of a plan", () => {
  afterEach(closeAll);

  it("hovers: a wall's figures, a tile's, a length in other units", async () => {
    const { document } = await openPlan("plain.tileplan");
    assert.match(await hoverAt(document, 'plain "Plain'), /60 3\/16.*80/s);
    assert.match(await hoverAt(document, "48 3/16"), /1223\.96|1224/);
  });

  it("hovers over a lay: what was chosen, and why", async () => {
    const { document } = await openPlan("window.tileplan");
    assert.match(await hoverAt(document, "brick {"), /chosen/i);
  });

  it("goes to a definition in the file that the plan uses", async () => {
    const { document } = await openPlan("plain.tileplan");
    const found = await until("the definition", async () => {
      const at = inside(document, "square {");
      const places = await run<(vscode.Location | vscode.LocationLink)[]>(
        "vscode.executeDefinitionProvider",
        document.uri,
        at,
      );
      return places[0];
    });
    const uri = "targetUri" in found ? found.targetUri : found.uri;
    assert.equal(uri.path, planUri("stock.tileplan").path);
  });

  it("finds every use of a name, and renames it in all files", async () => {
    const { document } = await openPlan("plain.tileplan");
    const at = inside(document, "square {");
    const places = await run<vscode.Location[]>(
      "vscode.executeReferenceProvider",
      document.uri,
      at,
    );
    const files = places.map(({ uri }) => uri.path.slice(uri.path.lastIndexOf("/") + 1)).sort();
    assert.deepEqual(files, ["plain.tileplan", "stock.tileplan"]);
    const edit = await run<vscode.WorkspaceEdit>(
      "vscode.executeDocumentRenameProvider",
      document.uri,
      at,
      "six-inch",
    );
    const edited = edit.entries().map(([uri]) => uri.path.slice(uri.path.lastIndexOf("/") + 1));
    assert.deepEqual(edited.sort(), ["plain.tileplan", "stock.tileplan"]);
  });

  it("completes by the place: statements of the block, names of the right kind, with help", async () => {
    const { document } = await openText(
      'units inch\ntile square "6 x 6" {\n  face 6 x 6\n  \n}\nwall a {\n  size 60 x 48\n  lay \n}\n',
    );
    const inTile = await completionsAt(document, new vscode.Position(3, 2));
    assert.ok(labels(inTile).includes("thickness"), labels(inTile).join());
    assert.ok(!labels(inTile).includes("bond"));
    const thickness = inTile[labels(inTile).indexOf("thickness")]!;
    assert.ok((thickness.detail ?? "").length > 10, thickness.detail);
    const afterLay = await completionsAt(document, new vscode.Position(7, 6));
    assert.ok(labels(afterLay).includes("square"), labels(afterLay).join());
  });

  it("outlines the plan, folds its blocks, and selects outward", async () => {
    const { document } = await openPlan("window.tileplan");
    const outline = await until("the outline", () =>
      run<vscode.DocumentSymbol[] | undefined>(
        "vscode.executeDocumentSymbolProvider",
        document.uri,
      ),
    );
    const wall = outline.find(({ name }) => name.startsWith("back"))!;
    assert.ok(wall.children.some(({ name }) => name.startsWith("sash")));
    const folds = await run<vscode.FoldingRange[]>(
      "vscode.executeFoldingRangeProvider",
      document.uri,
    );
    const { line } = rangeOf(document, "window sash").start;
    assert.ok(folds.some(({ start }) => start === line));
    const [selection] = await run<vscode.SelectionRange[]>(
      "vscode.executeSelectionRangeProvider",
      document.uri,
      [inside(document, "24 x 36")],
    );
    assert.ok(selection!.parent!.range.contains(selection!.range));
  });

  it("formats the text: its meaning stays, and a second time changes nothing", async () => {
    const editor = await openText(
      "units inch\nwall a {\nsize 60 x 48   # the bare wall\n      left wall movement 1/8 # soft\n}\n",
    );
    await run("editor.action.formatDocument");
    const once = editor.document.getText();
    const lines = once.split("\n").filter((line) => line.includes("#"));
    assert.match(
      lines.join("\n"),
      /^ {2}size 60 x 48 +# the bare wall\n {2}left wall movement 1\/8 +# soft$/,
    );
    assert.equal(lines[0]!.indexOf("#"), lines[1]!.indexOf("#"));
    await run("editor.action.formatDocument");
    assert.equal(editor.document.getText(), once);
  });

  it("hints at what was left to the solver, and not when the setting is off", async () => {
    const { document } = await openPlan("window.tileplan");
    const whole = new vscode.Range(0, 0, document.lineCount, 0);
    const hints = (): Promise<vscode.InlayHint[]> =>
      Promise.resolve(
        run<vscode.InlayHint[]>("vscode.executeInlayHintProvider", document.uri, whole),
      );
    const told = await until("hints", async () => {
      const found = await hints();
      return found.length > 0 && found;
    });
    const words = told.map(({ label }) =>
      typeof label === "string" ? label : label.map(({ value }) => value).join(""),
    );
    assert.match(words.join("\n"), /chosen: /);
    const settings = vscode.workspace.getConfiguration("gaugelath");
    await settings.update("hints", false, vscode.ConfigurationTarget.Global);
    try {
      await until("no hints", async () => (await hints()).length === 0);
    } finally {
      await settings.update("hints", undefined, vscode.ConfigurationTarget.Global);
    }
  });

  it("links a finding to its source, and its lamp mends it", async () => {
    const editor = await openPlan("plain.tileplan");
    const { document } = editor;
    await editor.edit((edit) =>
      edit.replace(rangeOf(document, "left wall movement 1/8"), "left wall movement 1/16"),
    );
    const narrow = await findingOf(document.uri, "movement/narrow");
    const fixes = await until("a fix", async () => {
      const found = await fixesOf(document.uri, narrow);
      return found.length > 0 && found;
    });
    const widen = fixes.find(({ title }) => /widen/i.test(title));
    assert.ok(widen, fixes.map(({ title }) => title).join("; "));
    await vscode.workspace.applyEdit(widen.edit!);
    await noFindingOf(document.uri, "movement/narrow");
    assert.match(document.getText(), /left wall movement 1\/8/);
  });

  it("allows a finding with a reason", async () => {
    const editor = await openPlan("plain.tileplan");
    const { document } = editor;
    await editor.edit((edit) => edit.replace(rangeOf(document, "60 3/16"), "61"));
    const sliver = await findingOf(document.uri, "cut/sliver");
    const allow = await until("the fix", async () =>
      (await fixesOf(document.uri, sliver)).find(({ title }) => /allow.*cut\/sliver/i.test(title)),
    );
    await vscode.workspace.applyEdit(allow.edit!);
    assert.match(document.getText(), /allow cut\/sliver "/);
    await until("a quiet finding with its reason", async () => {
      const { severity, message } = await findingOf(document.uri, "cut/sliver");
      return severity === vscode.DiagnosticSeverity.Hint && message.includes("allowed: ");
    });
  });
});
