import assert from "node:assert/strict";
import * as vscode from "vscode";
import { codesOf, findingOf, noFindingOf } from "../findings.js";
import { hands } from "../hands.js";
import { closeAll, openText, rangeOf, replace } from "../plans.js";
import { until } from "../until.js";
import { ROOM } from "./plan.js";

const run = vscode.commands.executeCommand;

/** What is offered behind a text that stands in the plan once. */
async function offered(text: string, behind: string): Promise<string[]> {
  const { document } = await openText(text);
  const { items } = await run<vscode.CompletionList>(
    "vscode.executeCompletionItemProvider",
    document.uri,
    rangeOf(document, behind).end,
  );
  return items
    .filter(({ kind }) => kind !== vscode.CompletionItemKind.Text)
    .map(({ label }) => (typeof label === "string" ? label : label.label));
}

function holds(all: readonly string[], ...wanted: readonly string[]): void {
  for (const word of wanted) assert.ok(all.includes(word), `${word} in ${all.join()}`);
}

/** Makes the quick fix of a finding with a title. */
async function mend(uri: vscode.Uri, code: string, title: string): Promise<void> {
  const { range } = await findingOf(uri, code);
  const { QuickFix } = vscode.CodeActionKind;
  const fixes = await run<vscode.CodeAction[]>(
    "vscode.executeCodeActionProvider",
    uri,
    range,
    QuickFix.value,
  );
  const fix = fixes.find((each) => each.title === title);
  assert.ok(fix?.edit, fixes.map((each) => each.title).join());
  await vscode.workspace.applyEdit(fix.edit);
}

describe("a room's plan, written in the editor", () => {
  afterEach(closeAll);

  it("completes what is wanted of a room: the block as a person types it, and its lines", async () => {
    const editor = await openText("units inch\n");
    editor.selection = new vscode.Selection(1, 0, 1, 0);
    await hands.type("pre", 60);
    const row = ".suggest-widget.visible .monaco-list-row.focused:has-text('prefer')";
    await hands.waitFor({ selector: row });
    await hands.screenshot("prefer-completion");
    await hands.press("Enter");
    await until("the word", () => editor.document.getText().includes("prefer"));
    holds(
      await offered(ROOM.replace("  courses meet\n", "  \n"), "prefer {\n  "),
      ...["courses", "centre", "whole", "no", "equal", "few"],
    );
  });

  it("completes a wall's outline, its lays' places and starts round corners", async () => {
    const wall = 'wall half "Half wall" {\n  ';
    holds(await offered(ROOM.replace(/ {2}outline .*\n/, "  \n"), wall), "outline", "leg", "bench");
    const lay = "lay field {\n    over";
    const inLay = await offered(ROOM.replace("over dado", "ov"), "lay field {\n    ov");
    holds(inLay, "over", "under", "covers");
    holds(await offered(ROOM.replace("over dado", "over "), `${lay} `), "dado");
    holds(
      await offered(ROOM.replace("wrapped from end added", ""), "across "),
      ...["wrapped", "mirrored"],
    );
    const corner = await offered(ROOM.replace("outside pier over", "outside "), "right outside ");
    holds(corner, "pier");
  });

  it("tells what is wrong with them, and mends an outside corner that isn't answered", async () => {
    const editor = await openText(ROOM);
    const { uri } = editor.document;
    const wish = await findingOf(uri, "wish/not-met");
    assert.match(wish.message, /whole courses at sill of sash.*it would cost/);
    assert.ok(!codesOf(uri).some((code) => code.startsWith("syntax/")));
    await replace(editor, "  left outside end under joint 1/16\n", "");
    await mend(uri, "plan/corner-unanswered", "Add `left outside end under` to the other wall");
    await noFindingOf(uri, "plan/corner-unanswered");
    assert.match(editor.document.getText(), /wall pier[^]*left outside end under[^]*wall half/);
    await replace(editor, "over dado", "over dada");
    const name = await until("a finding of the name", () =>
      vscode.languages.getDiagnostics(uri).find(({ message }) => message.includes("dada")),
    );
    assert.equal(editor.document.getText(name.range).includes("dada"), true);
    await replace(editor, "over dada", "over dado");
    await replace(editor, "24, 48 to 0, 48", "24, 48 to 30, 60 to 0, 48");
    await findingOf(uri, "plan/outline");
  });
});
