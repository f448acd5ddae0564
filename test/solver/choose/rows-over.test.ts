import assert from "node:assert/strict";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { runsOver } from "../../../src/solver/choose/rows-over.js";
import { inches, oneWall, SIXTEENTH } from "./model-plan.js";

const one = oneWall({ face: [inches(6), inches(3)], size: [inches(60), inches(40)] });
const { across } = fieldOf(one.plan, one.wall, one.lay, SIXTEENTH);

describe("runs of tiles that may begin anywhere in a span", () => {
  it("are one where no edge touches any, and all tiles are in them", () => {
    const origin = { from: inches(1), to: inches(2) };
    const runs = runsOver(across, origin, []);
    assert.equal(runs.length, 1);
    assert.deepEqual([runs[0]!.first, runs[0]!.many], [-1, 11]);
  });

  it("part at each tile that an edge may touch", () => {
    const at = inches(20);
    const runs = runsOver(across, { from: 0, to: inches(1) }, [{ from: at, to: at, slopes: true }]);
    const touched = runs.filter((run) => run.slopes);
    assert.deepEqual(
      touched.map(({ first, many }) => [first, many]),
      [[3, 1]],
    );
  });
});
