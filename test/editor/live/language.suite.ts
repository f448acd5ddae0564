import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { closeAll, openText } from "../plans.js";
import { until } from "../until.js";

function put(editor: vscode.TextEditor, line: number, character: number): void {
  editor.selection = new vscode.Selection(line, character, line, character);
}

describe("a plan's text in the editor", () => {
  afterEach(closeAll);

  it("closes braces and quotes, and indents what stands between them", async () => {
    const editor = await openText("");
    await hands.type('wall back "');
    await hands.type('Back" {');
    await hands.press("Enter");
    await hands.type("size 60 x 96");
    const wanted = 'wall back "Back" {\n  size 60 x 96\n}';
    await until(wanted, () => editor.document.getText() === wanted);
  });

  it("is commented out by lines", async () => {
    const editor = await openText("units inch\nbed 1/8\n");
    put(editor, 1, 2);
    await vscode.commands.executeCommand("editor.action.commentLine");
    assert.equal(editor.document.getText(), "units inch\n# bed 1/8\n");
  });

  it("goes on with a comment that is broken in the middle", async () => {
    const editor = await openText("# one two\n");
    put(editor, 0, 6);
    await hands.press("Enter");
    await until("a second line", () => editor.document.lineCount > 2);
    assert.equal(editor.document.getText(), "# one \n# two\n");
  });

  it("takes names with a hyphen, rules' codes and mixed numbers for words", async () => {
    const editor = await openText("head-height cut/under-half 5-7/8 size\n");
    const word = (character: number): string =>
      editor.document.getText(
        editor.document.getWordRangeAtPosition(new vscode.Position(0, character)),
      );
    assert.equal(word(6), "head-height");
    assert.equal(word(20), "cut/under-half");
    assert.equal(word(29), "5-7/8");
    assert.equal(word(34), "size");
  });

  it("offers its blocks as snippets", async () => {
    const editor = await openText("");
    await vscode.commands.executeCommand("editor.action.insertSnippet", {
      langId: "tileplan",
      name: "niche",
    });
    assert.match(editor.document.getText(), /^niche shelf \{\n {2}at 21, 44\n/);
  });
});
