import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { jointEdit } from "../../../src/service/fixes/joint-edit.js";
import { statementsOf } from "../../../src/service/walk-tree.js";
import { edited, wallPlan } from "../plans.js";
import { stateOf } from "../state-of.js";

/** What a lay's joint is said to be once it is widened to 1/8 in. */
function widened(joint: string): string {
  const text = wallPlan(`    joint ${joint}\n`);
  const state = stateOf(text);
  for (const { statement } of statementsOf(state.tree.statements)) {
    if (statement.kind !== "joint") continue;
    const had = state.outcome.plan.walls[0]!.lays[0]!.joint;
    const after = edited(text, [jointEdit(state, statement, had, NM_PER.inch / 8)]);
    return /joint (.*)\n {2}\}/.exec(after)![1]!;
  }
  throw new Error("no joint");
}

describe("a lay's joint that is widened", () => {
  it("is the least", () => {
    assert.equal(widened("1/16"), "1/8");
  });

  it("keeps the end of its range above the least, and loses one that isn't", () => {
    assert.equal(widened("1/16 to 3/16"), "1/8 to 3/16");
    assert.equal(widened("1/16 to 1/8"), "1/8");
  });
});
