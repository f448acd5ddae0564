import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { closeAll, openPlan, replace, writePlan } from "../plans.js";
import { openPreview, type ShownPreview } from "../preview.js";
import { until } from "../until.js";
import { ROOM } from "./plan.js";

const NAME = "rooms.tileplan";

interface Card {
  readonly title: string;
  readonly standing: string;
  readonly figures: readonly string[];
  readonly button: string | null;
}

const CARDS = `[...document.querySelectorAll(".options[aria-busy=false] .option")].map((card) => ({
  title: card.querySelector("h4").textContent,
  standing: card.querySelector("p").textContent,
  figures: [...card.querySelectorAll("dt")].map(
    (name) => name.textContent + ": " + name.nextElementSibling.textContent),
  button: card.querySelector("button")?.textContent ?? null,
}))`;

/** What a layout says of its pieces: a joint that is written down is no longer over the least of its range. */
function kept({ figures }: Card): string {
  return figures.filter((figure) => !figure.startsWith("joint over")).join();
}

function button(name: string) {
  return { selector: `button:text-is('${name}')`, where: "preview" } as const;
}

function cardsThat(
  preview: ShownPreview,
  what: string,
  fits: (cards: readonly Card[]) => boolean,
): Promise<readonly Card[]> {
  return until(what, async () => {
    const cards = await preview.ask<readonly Card[]>(CARDS);
    return cards.length > 0 && fits(cards) && cards;
  });
}

describe("the layouts of a room in the preview", () => {
  let editor: vscode.TextEditor;
  let preview: ShownPreview;

  beforeEach(async () => {
    await writePlan(NAME, ROOM);
    editor = await openPlan(NAME);
    preview = await openPreview();
    await preview.untilDrawn("window sash");
  });

  afterEach(closeAll);

  it("are shown side by side; one that is taken is one edit, and one undo takes it back", async () => {
    await hands.click(button("Options"));
    const cards = await cardsThat(preview, "the layouts", () => true);
    assert.match(cards[0]!.title, /^A.*in the plan/);
    const chosen = cards.find(({ standing }) => standing.includes("before all others"))!;
    await hands.screenshot("options");
    await hands.click(button(chosen.button!));
    const { document } = editor;
    await until("the written layout", () => document.getText() !== ROOM);
    const written = document.getText();
    assert.doesNotMatch(written, /at 12 to 14|30 to 34|1\/16 to 1\/8/);
    const own = await cardsThat(
      preview,
      "the layouts of the written text",
      ([first]) => first!.title.includes("in the plan") && kept(first!) === kept(chosen),
    );
    assert.equal(own[0]!.button, null, "all of it is written down");
    await hands.screenshot("option-taken");
    await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
    await vscode.commands.executeCommand("undo");
    await until("the text as it was", () => document.getText() === ROOM);
    await vscode.commands.executeCommand("redo");
    await until("the written text again", () => document.getText() === written);
  });

  it("are a wall's when it is chosen, and follow the text", async () => {
    await hands.click({ selector: ".walls [data-wall=end]", where: "preview" });
    await hands.click(button("Options"));
    const before = await cardsThat(preview, "the wall's layouts", ([first]) =>
      first!.standing.includes("the best"),
    );
    await replace(editor, "size 30 x 30\n  left corner", "size 31 x 30\n  left corner");
    await cardsThat(
      preview,
      "other layouts",
      (cards) =>
        cards.map(({ figures }) => figures).join() !== before.map(({ figures }) => figures).join(),
    );
  });

  it("are those of each lay, where the wall has several; taken, they stand in that lay's block", async () => {
    await hands.click({ selector: ".walls [data-wall=half]", where: "preview" });
    await hands.click(button("Options"));
    await cardsThat(preview, "the wall's layouts", () => true);
    const titles = await preview.ask<readonly string[]>(
      `[...document.querySelectorAll(".options h3")].map((title) => title.textContent)`,
    );
    assert.ok(titles.length > 1, titles.join("; "));
    await hands.screenshot("options-of-lays");
    const upper = `section:has(h3:text("${titles.at(-1)!}")) button.take >> nth=-1`;
    await hands.click({ selector: upper, where: "preview" });
    await until("the lay's start", () => editor.document.getText() !== ROOM);
    const written = editor.document.getText();
    assert.match(
      written.slice(written.indexOf("lay field", written.indexOf("wall half"))),
      /across /,
    );
  });

  it("stand beside the room unfolded, which goes to the text as the walls do", async () => {
    await hands.click(button("Room"));
    await preview.untilDrawn("outside corner");
    await hands.screenshot("room");
    const { x, y } = await preview.middleOf("end");
    await hands.mouse("click", x, y);
    await until("the wall's lay", () => {
      const { activeTextEditor } = vscode.window;
      const line = activeTextEditor?.selection.active.line ?? 0;
      const text = editor.document.getText();
      const [from, to] = ["wall end", "wall pier"].map(
        (words) => editor.document.positionAt(text.indexOf(words)).line,
      );
      return activeTextEditor?.document === editor.document && line >= from! && line < to!;
    });
  });
});
