import assert from "node:assert/strict";
import { findCutSizes } from "../../src/rules/cut-sizes.js";
import { FAULT } from "../../src/solver/index.js";
import { solveClean } from "../support/solve-text.js";
import { wallText } from "./wall-text.js";

describe("finding cuts by their size", () => {
  const { solved } = solveClean(wallText({ size: "13 x 7" }));
  const find = (bits: { across: number; up: number }) =>
    findCutSizes(solved.walls[0]!, solved, {
      bits,
      least: (face) => face / 3,
      wanted: (least) => `no less than ${least}`,
    }).map(({ message }) => message);

  it("tells each direction that is asked for, in the words that are given", () => {
    assert.deepEqual(find({ across: FAULT.widthSliver, up: FAULT.heightSliver }), [
      "3 pieces at the right end are 3/4 in wide; no less than 2 in is wanted",
      "3 pieces along the top are 3/4 in high; no less than 1 in is wanted",
    ]);
    assert.equal(find({ across: FAULT.widthSliver, up: 0 }).length, 1);
    assert.deepEqual(find({ across: 0, up: 0 }), []);
  });
});
