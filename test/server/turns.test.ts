import assert from "node:assert/strict";
import { CancellationTokenSource } from "vscode-languageserver/node";
import { turnsOf } from "../../src/server/turns.js";

describe("turns of a long walk", () => {
  it("are called off with their token", () => {
    const source = new CancellationTokenSource();
    const turns = turnsOf(source.token);
    assert.equal(turns.cancelled, false);
    source.cancel();
    assert.equal(turns.cancelled, true);
  });

  it("let others go before when they pause", async () => {
    const order: string[] = [];
    setTimeout(() => order.push("other"));
    await turnsOf(new CancellationTokenSource().token).pause();
    order.push("walk");
    assert.deepEqual(order, ["other", "walk"]);
  });
});
