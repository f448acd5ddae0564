import assert from "node:assert/strict";
import { wallOptions } from "../../src/service/wall-options.js";
import { optionsOf } from "../../src/solver/index.js";
import { wallPlan } from "./plans.js";
import { stateOf } from "./state-of.js";

describe("a wall's options in an editor", () => {
  it("are the solver's, weighed once for a version of the text", () => {
    const { plan, solved } = stateOf(wallPlan("    joint 1/16\n")).outcome;
    const [wall] = solved.walls;
    const found = wallOptions(solved, wall!)!;
    assert.deepEqual(
      found.options.map(({ score }) => score),
      optionsOf(plan, wall!)!.options.map(({ score }) => score),
    );
    assert.equal(wallOptions(solved, wall!), found);
  });

  it("are none where no tile is laid", () => {
    const bare = wallPlan("").replace(/ {2}lay pressed \{[^}]*\}\n/, "");
    const { solved } = stateOf(bare).outcome;
    assert.equal(wallOptions(solved, solved.walls[0]!), null);
  });
});
