import assert from "node:assert/strict";
import { statementFrom } from "../../src/service/statement-from.js";
import { wallPlan } from "./plans.js";
import { stateOf } from "./state-of.js";

describe("the statement that a fact was written in", () => {
  it("is the block of a wall, of its edge and of its lay", () => {
    const state = stateOf(wallPlan("    joint 1/16\n"));
    const { wall, lays } = state.outcome.solved.walls[0]!;
    const kinds = [wall, wall.edges.left, lays[0]!.lay, lays[0]!.lay.joint].map(
      ({ origin }) => statementFrom(state, origin)?.kind,
    );
    assert.deepEqual(kinds, ["wall", "edge", "lay", "joint"]);
  });

  it("is none of this text for what a used file brings", () => {
    const state = stateOf(wallPlan("    joint 1/16\n"));
    const [tile] = state.outcome.plan.tiles;
    assert.equal(statementFrom(state, tile!.origin), null);
  });

  it("is none where no statement has just that stretch", () => {
    const state = stateOf("units inch\n");
    const place = { line: 0, character: 0 };
    const range = { start: place, end: { line: 0, character: 5 } };
    const origin = { file: state.document.file, range, head: range };
    assert.equal(statementFrom(state, origin), null);
    const whole = { ...range, end: { line: 0, character: 10 } };
    assert.equal(statementFrom(state, { ...origin, range: whole })?.kind, "units");
  });
});
