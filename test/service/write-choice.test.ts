import assert from "node:assert/strict";
import { DocumentState } from "../../src/service/document-state.js";
import { writeChoice } from "../../src/service/write-choice.js";
import { edited, Plans, wallPlan } from "./plans.js";

/** The text with its first lay's choice written down. */
function written(text: string): string | null {
  const plans = new Plans();
  const state = new DocumentState(plans.open(text), plans);
  const edits = writeChoice(state, state.outcome.solved.walls[0]!.lays[0]!);
  return edits && edited(text, edits);
}

describe("a choice written down", () => {
  it("adds what was left out alone", () => {
    const text = wallPlan("    joint 1/16\n    up full course from bottom\n");
    assert.match(written(text)!, /up full course from bottom\n {4}across [^\n]+\n {2}}\n/);
  });

  it("takes the place of a joint's range", () => {
    const stated = "    across tile centred on wall\n    up full course from bottom\n";
    assert.match(
      written(wallPlan(`    joint 1/16 to 1/8\n${stated}`))!,
      /\n {4}joint [^\n]+(?<! to [^\n]+)\n/,
    );
  });

  it("is none where nothing was chosen", () => {
    const stated =
      "    joint 1/16\n    across tile centred on wall\n    up full course from bottom\n";
    assert.equal(written(wallPlan(stated)), null);
  });

  it("is none beside a start that can't be understood", () => {
    assert.equal(written(wallPlan("    joint 1/16\n    across tile centred on\n")), null);
    assert.equal(written(wallPlan("    joint 1/16\n    across tile centred on nothing\n")), null);
  });
});
