import assert from "node:assert/strict";
import * as vscode from "vscode";
import { hands } from "../hands.js";
import { openPlan } from "../plans.js";

describe("the extension in a browser", () => {
  it("runs in the browser's extension host", async () => {
    await openPlan("first.tileplan");
    const extension = vscode.extensions.getExtension("gaugelath.gaugelath");
    assert.ok(extension);
    await extension.activate();
    assert.equal(typeof process, "undefined");
    await hands.screenshot("web");
  });
});
