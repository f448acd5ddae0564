import assert from "node:assert/strict";
import { ringOf, type Region } from "../../src/solver/index.js";
import { visibleOf } from "../../src/solver/visible.js";

const level = (value: number) => ({ at: [0], value: [value] });
const bare = {
  left: level(0),
  right: level(300),
  bottom: level(0),
  top: level(200),
  hiddenLeft: null,
  hiddenRight: null,
  hiddenBottom: null,
  hiddenTop: null,
  takeaways: [],
  roundHoles: [],
  steps: [],
  between: { left: -Infinity, right: Infinity },
  bounds: { left: 0, bottom: 0, right: 300, top: 200 },
} satisfies Region;
const part = { bounds: { left: 0, bottom: 0, right: 60, top: 30 }, shape: null, touched: null };

const outlines = (region: Region) =>
  visibleOf(part, region)?.shapes.map((shape) => shape.outline) ?? "all";

describe("what other walls' tile leaves to be seen", () => {
  it("is all of a piece that nothing covers", () => {
    assert.equal(outlines(bare), "all");
    assert.equal(outlines({ ...bare, hiddenRight: level(60) }), "all");
  });

  it("is the rest of a piece whose end is covered, on either side", () => {
    assert.deepEqual(outlines({ ...bare, hiddenLeft: level(11) }), [
      ringOf({ left: 11, bottom: 0, right: 60, top: 30 }),
    ]);
    assert.deepEqual(outlines({ ...bare, hiddenLeft: level(11), hiddenRight: level(50) }), [
      ringOf({ left: 11, bottom: 0, right: 50, top: 30 }),
    ]);
  });

  it("is nothing of a piece that is wholly covered", () => {
    assert.deepEqual(outlines({ ...bare, hiddenLeft: level(60) }), []);
  });

  it("ends along a slope where the covering wall is out of plumb", () => {
    const hiddenLeft = { at: [0, 30], value: [10, 16] };
    assert.deepEqual(outlines({ ...bare, hiddenLeft }), [[10, 0, 60, 0, 60, 30, 16, 30]]);
  });
});
