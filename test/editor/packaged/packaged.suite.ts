import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import * as vscode from "vscode";
import { findingOf } from "../findings.js";
import { hands } from "../hands.js";
import { openPlan, replace } from "../plans.js";
import { openPreview } from "../preview.js";
import { until } from "../until.js";

const FILES = [
  ".vsixmanifest",
  "LICENSE.txt",
  "NOTICES.txt",
  "changelog.md",
  "dist/extension.js",
  "dist/first-wall.svg",
  "dist/fonts/bold.ttf",
  "dist/fonts/regular.ttf",
  "dist/preview.js",
  "dist/print.js",
  "dist/server.js",
  "language-configuration.json",
  "media/back-wall.png",
  "media/file-dark.svg",
  "media/file-light.svg",
  "media/icon.png",
  "media/niche-wall.compared.png",
  "media/preview.css",
  "media/room.unfolded.png",
  "media/walkthrough/first-wall.tileplan",
  "media/walkthrough/mend.md",
  "media/walkthrough/write.md",
  "package.json",
  "readme.md",
  "syntaxes/snippets.json",
  "syntaxes/tileplan.tmLanguage.json",
];

describe("the packaged extension, installed", () => {
  const extension = vscode.extensions.getExtension("gaugelath.gaugelath")!;

  it("holds what it needs, and nothing else", () => {
    const found = readdirSync(extension.extensionPath, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) =>
        `${parentPath}/${name}`.slice(extension.extensionPath.length + 1),
      );
    assert.deepEqual(found.sort(), FILES);
  });

  it("is used: findings, the preview, a check by its task", async () => {
    const editor = await openPlan("plain.tileplan");
    const preview = await openPreview();
    await preview.untilDrawn("60 3/16");
    await replace(editor, "60 3/16", "61");
    await findingOf(editor.document.uri, "cut/sliver");
    await preview.untilDrawn("61");
    assert.ok(extension.isActive);
    const [task] = await vscode.tasks.fetchTasks({ type: "gaugelath" });
    const ended = new Promise<number | undefined>((resolve) =>
      vscode.tasks.onDidEndTaskProcess(({ exitCode }) => resolve(exitCode)),
    );
    await vscode.tasks.executeTask(task!);
    assert.equal(await ended, 1);
  });

  it("has its README with a picture", () => {
    const root = extension.extensionPath;
    const readme = readFileSync(`${root}/readme.md`, "utf8");
    const [, picture] = /!\[[^\]]+\]\(([^)]+\.png)\)/.exec(readme)!;
    assert.equal(readFileSync(`${root}/${picture!}`).subarray(1, 4).toString(), "PNG");
  });

  it("shows the example's wall in the walkthrough", async () => {
    const walkthrough = "gaugelath.gaugelath#firstWall";
    await vscode.commands.executeCommand("workbench.action.openWalkthrough", walkthrough, false);
    await hands.click({ selector: ".getting-started-step:has-text('See it laid')" });
    const image = `document.querySelector(".getting-started-media img")`;
    await until("the picture", () => hands.evaluate<boolean>(`${image}?.naturalWidth > 0`));
    await hands.screenshot("walkthrough");
  });
});
