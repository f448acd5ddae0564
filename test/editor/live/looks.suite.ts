import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import path from "node:path";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { closeAll, openPlan } from "../plans.js";
import { openPreview, type ShownPreview } from "../preview.js";
import { until } from "../until.js";

const THEMES = {
  light: "Default Light Modern",
  dark: "Default Dark Modern",
  "high-contrast": "Default High Contrast",
  "high-contrast-light": "Default High Contrast Light",
} as const;

interface AxeFault {
  readonly id: string;
  readonly help: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[];
}

const theme = (name: string | undefined): Thenable<void> =>
  vscode.workspace
    .getConfiguration("workbench")
    .update("colorTheme", name, vscode.ConfigurationTarget.Global);

/** What axe-core has against the preview's page. */
async function axeFaults(preview: ShownPreview): Promise<string[]> {
  const axe = path.join(__dirname, "../../../../node_modules/axe-core/axe.min.js");
  await preview.ask(`${readFileSync(axe, "utf8")}; true`);
  const { violations, passed } = await preview.ask<{
    readonly violations: readonly AxeFault[];
    readonly passed: readonly string[];
  }>(
    `axe.run(document).then(({ violations, passes }) => ({ violations, passed: passes.map(({ id }) => id) }))`,
  );
  assert.ok(passed.includes("color-contrast") && passed.includes("button-name"), passed.join());
  return violations.map(({ id, help, nodes }) => {
    const [first] = nodes;
    return `${id}: ${help}: ${first!.html.slice(0, 200)} (${first!.failureSummary})`;
  });
}

describe("the preview's looks", () => {
  let usual: string | undefined;
  before(() => {
    usual = vscode.workspace.getConfiguration("workbench").get("colorTheme");
  });
  afterEach(closeAll);
  after(() => theme(usual));

  for (const [kind, name] of Object.entries(THEMES)) {
    it(`take the editor's colours: ${kind}; axe-core has nothing against them`, async () => {
      await theme(name);
      await openPlan("window.tileplan");
      const preview = await openPreview();
      await preview.untilDrawn("window sash");
      await until(`the ${kind} theme`, () =>
        preview.ask<boolean>(`document.body.className.includes("vscode-${kind}")`),
      );
      const [page, text] = await preview.ask<[string, string]>(
        `[getComputedStyle(document.body).backgroundColor, getComputedStyle(document.documentElement).getPropertyValue("--vscode-editor-background")]`,
      );
      assert.notEqual(page, "rgba(0, 0, 0, 0)");
      assert.notEqual(text, "");
      await hands.screenshot(`looks-${kind}`);
      assert.deepEqual(await axeFaults(preview), []);
    });
  }

  it("are worked by keys alone", async () => {
    await theme(usual);
    const editor = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await hands.click({ selector: ".stage", where: "preview" }, { position: { x: 5, y: 5 } });
    const before = await preview.view();
    await hands.press("+");
    await until("a closer look", async () => (await preview.view()).zoom !== before.zoom);
    await hands.press("0");
    await until("the whole again", async () => (await preview.view()).zoom === before.zoom);
    await hands.press("p");
    const words = await until("a reading", () =>
      preview.ask<string | null>(
        `document.querySelector(".stage .reading:not([hidden])")?.textContent`,
      ),
    );
    assert.match(words, /[Cc]ourse/);
    await hands.press("Enter");
    await until("the line that made it", () => {
      const active = vscode.window.activeTextEditor;
      const line = active?.document.lineAt(active.selection.start.line).text;
      return active?.document === editor.document && line?.includes("lay square");
    });
  });
});
