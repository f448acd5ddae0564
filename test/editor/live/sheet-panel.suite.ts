import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { closeAll, openPlan, planUri } from "../plans.js";
import { until } from "../until.js";

const SHEET = "Sheet: window.tileplan";

function sheetTab(): vscode.Tab | undefined {
  return vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .find(({ label }) => label === SHEET);
}

describe("the setter's sheet", () => {
  afterEach(closeAll);

  it("opens by its command, with the wall, the purchases and the poles", async () => {
    await openPlan("window.tileplan");
    await vscode.commands.executeCommand("gaugelath.openSheet");
    await until("the sheet's tab", () => sheetTab());
    await hands.waitFor({ selector: "h2:has-text('Shopping list')", where: "frame:.pages" });
    await hands.waitFor({ selector: "figure svg", where: "frame:.pages" });
    await hands.screenshot("sheet");
  });

  it("is saved as PDF, beside the plan", async () => {
    await openPlan("window.tileplan");
    await vscode.commands.executeCommand("gaugelath.openSheet");
    await hands.waitFor({ selector: "h2:has-text('Shopping list')", where: "frame:.pages" });
    await hands.click({ selector: "button:has-text('Save...')", where: "frame:.pages" });
    await hands.waitFor({ selector: ".quick-input-list .monaco-list-row:has-text('PDF')" });
    await hands.type("PDF");
    await hands.press("Enter");
    await until("window.pdf offered", () =>
      hands.evaluate<boolean>(
        `document.querySelector(".quick-input-widget input")?.value.endsWith("window.pdf") ?? false`,
      ),
    );
    await hands.press("Enter");
    const bytes = await until("window.pdf", async () => {
      try {
        const read = await vscode.workspace.fs.readFile(planUri("window.pdf"));
        return read.length > 1000 && read;
      } catch {
        return null;
      }
    });
    assert.equal(new TextDecoder().decode(bytes.slice(0, 5)), "%PDF-");
  });

  it("shows once for each plan", async () => {
    await openPlan("window.tileplan");
    await vscode.commands.executeCommand("gaugelath.openSheet", planUri("window.tileplan"));
    await vscode.commands.executeCommand("gaugelath.openSheet", planUri("window.tileplan"));
    await until("the sheet's tab", () => sheetTab());
    const tabs = vscode.window.tabGroups.all.flatMap((group) => group.tabs);
    assert.equal(tabs.filter(({ label }) => label === SHEET).length, 1);
  });
});
