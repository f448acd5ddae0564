import assert from "node:assert/strict";
import { readdirSync } from "node:fs";
import * as vscode from "vscode";
import { findingOf } from "../findings.js";
import { hands } from "../hands.js";
import { openPlan, replace } from "../plans.js";
import { openPreview } from "../preview.js";

const FILES = [
  ".vsixmanifest",
  "LICENSE.txt",
  "NOTICES.txt",
  "changelog.md",
  "dist/cli.cjs",
  "dist/cli/main.cjs",
  "dist/extension.cjs",
  "dist/extension.web.js",
  "dist/preview.js",
  "dist/server.cjs",
  "dist/server.web.js",
  "language-configuration.json",
  "media/file-dark.svg",
  "media/file-light.svg",
  "media/icon.png",
  "media/preview.css",
  "media/walkthrough/first-wall.tileplan",
  "media/walkthrough/mend.md",
  "media/walkthrough/see.md",
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

  it("shows its README with its picture", async () => {
    await vscode.commands.executeCommand("extension.open", "gaugelath.gaugelath");
    await hands.waitFor({ selector: ".extension-editor .name:has-text('Gaugelath')" });
    await new Promise((resolve) => setTimeout(resolve, 2000));
    await hands.screenshot("readme");
  });
});
