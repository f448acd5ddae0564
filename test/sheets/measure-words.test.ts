import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { MEASURE_NAMES, measureFigure } from "../../src/sheets/measure-words.js";
import { MEASURES, type Score } from "../../src/solver/index.js";

const SCORE: Score = {
  slivers: 1,
  underHalf: 2,
  imbalance: NM_PER.inch / 8,
  cuts: 3,
  tiles: 4,
  jointOver: NM_PER.inch / 16,
};

describe("the words of a layout's measures", () => {
  it("name them in the order in which they decide", () => {
    assert.deepEqual(Object.keys(MEASURE_NAMES), MEASURES);
  });

  it("tell numbers of pieces, and lengths in the plan's units", () => {
    const figures = MEASURES.map((measure) => measureFigure(measure, SCORE, "inch"));
    assert.deepEqual(figures, ["1", "2", "1/8 in", "3", "4", "1/16 in"]);
  });
});
