import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { movedWindow } from "../moved-window.js";
import { beginAnew } from "../repository.js";
import { until } from "../until.js";

const THEMES = {
  light: "Default Light Modern",
  dark: "Default Dark Modern",
  "high-contrast": "Default High Contrast",
} as const;

const theme = (name: string | undefined): Thenable<void> =>
  vscode.workspace
    .getConfiguration("workbench")
    .update("colorTheme", name, vscode.ConfigurationTarget.Global);

describe("a comparison", () => {
  afterEach(async () => {
    await theme(undefined);
    await beginAnew();
  });

  it("shows both states side by side, over one another, and cut at a handle", async () => {
    const { comparison } = await movedWindow();
    const walls = `document.querySelectorAll(".board svg [data-wall]").length`;
    assert.equal(await comparison.ask(walls), 2);
    await comparison.choose("Overlay");
    assert.equal(
      await comparison.ask(`document.querySelectorAll("[id$=-recut]").length > 0`),
      true,
    );
    await comparison.choose("Slider");
    assert.equal(await comparison.ask(`document.querySelectorAll(".layer svg").length`), 2);
  });

  it("has a handle that keys and the mouse move, and tells where it stands", async () => {
    const { comparison } = await movedWindow();
    await comparison.choose("Slider");
    const { where } = comparison;
    const value = (): Promise<string> =>
      comparison.ask(`document.querySelector(".handle").getAttribute("aria-valuenow")`);
    await comparison.ask(`document.querySelector(".handle").focus()`);
    assert.equal(await value(), "50");
    await hands.press("ArrowRight");
    await until("the step", async () => (await value()) === "52");
    await hands.press("PageDown");
    await until("the leap", async () => (await value()) === "42");
    await hands.press("End");
    await until("the end", async () => (await value()) === "100");
    await hands.press("Home");
    await until("the beginning", async () => (await value()) === "0");
    const board = await hands.boxOf({ selector: ".board", where });
    const grip = await hands.boxOf({ selector: ".handle i", where });
    await hands.mouse("move", grip.x + grip.width / 2, grip.y + grip.height / 2);
    await hands.mouse("down");
    await hands.mouse("move", board.x + 0.75 * board.width, grip.y, { steps: 5 });
    await hands.mouse("up");
    await until("where it was dragged to", async () => (await value()) === "75");
  });

  for (const [look, name] of Object.entries(THEMES)) {
    it(`is looked at in the theme "${look}"`, async () => {
      const { comparison } = await movedWindow();
      await theme(name);
      await vscode.commands.executeCommand("workbench.action.maximizeEditorHideSidebar");
      for (const way of ["Side by side", "Overlay", "Slider"] as const) {
        await comparison.choose(way);
        await new Promise((resolve) => setTimeout(resolve, 300));
        await hands.screenshot(`${way.toLowerCase().replaceAll(" ", "-")}-${look}`);
      }
    });
  }
});
