import assert from "node:assert/strict";
import { DocumentState } from "../../../src/service/document-state.js";
import { stateStart } from "../../../src/service/fixes/state-start.js";
import { edited, Plans, wallPlan } from "../plans.js";

/** The plan with `up full course from top` stated in its lay; null where that can't be. */
function stated(text: string): string | null {
  const plans = new Plans();
  const state = new DocumentState(plans.open(text), plans);
  const lay = state.outcome.solved.walls[0]!.lays[0]!;
  const edit = stateStart(state, lay, "up", "up full course from top");
  return edit && edited(text, [edit]);
}

describe("stating a start", () => {
  it("takes the place of the one that is stated, its comment kept", () => {
    const text = wallPlan("    joint 1/16\n    up joint at 3 # the line\n");
    assert.match(stated(text)!, /joint 1\/16\n {4}up full course from top # the line\n {2}}/);
  });

  it("adds a line where none is", () => {
    assert.match(
      stated(wallPlan("    joint 1/16\n"))!,
      /joint 1\/16\n {4}up full course from top\n/,
    );
  });

  it("leaves a lay alone in which a line can't be understood", () => {
    assert.equal(stated(wallPlan("    joint 1/16\n    across tile centred on\n")), null);
  });
});
