import assert from "node:assert/strict";
import { layStrip, type Strip } from "../../../src/solver/trim/strip.js";

const strip: Strip = {
  along: { opening: null as never },
  side: "bottom",
  length: 100,
  width: 20,
  piece: 60,
  joint: 0,
  mitreStart: 0,
  mitreEnd: 0,
  bends: [],
  overrun: 0,
  mitreJoints: [],
  cuts: [],
  direction: [1, 0],
  place: (along, inward) => [1000 + along, 500 + inward],
};

const outlines = (more: Partial<Strip>) =>
  layStrip({ ...strip, ...more }).pieces.map((piece) => piece.shape.outline);

describe("a strip of trim", () => {
  it("is divided along its side", () => {
    assert.deepEqual(outlines({}), [
      [1000, 500, 1050, 500, 1050, 520, 1000, 520],
      [1050, 500, 1100, 500, 1100, 520, 1050, 520],
    ]);
  });

  it("is mitred at 45 degrees from its outer corners", () => {
    assert.deepEqual(outlines({ mitreStart: 20, mitreEnd: 20 }), [
      [1000, 500, 1050, 500, 1050, 520, 1020, 520],
      [1050, 500, 1100, 500, 1080, 520, 1050, 520],
    ]);
  });

  it("says which ends are mitred, in its side's own direction", () => {
    const upright = layStrip({
      ...strip,
      side: "left",
      mitreStart: 20,
      mitreEnd: 20,
      direction: [0, 1],
      place: (along, inward) => [inward, along],
    });
    assert.deepEqual(
      upright.pieces.map((piece) => piece.mitre),
      [["bottom"], ["top"]],
    );
  });

  it("has a whole piece only at the trim's full length, uncut", () => {
    const whole = (more: Partial<Strip>) =>
      layStrip({ ...strip, ...more }).pieces.map((piece) => piece.whole);
    assert.deepEqual(whole({ length: 120 }), [true, true]);
    assert.deepEqual(whole({ length: 120, mitreEnd: 20 }), [true, false]);
    assert.deepEqual(whole({ length: 100 }), [false, false]);
  });
});
