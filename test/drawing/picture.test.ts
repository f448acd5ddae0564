import assert from "node:assert/strict";
import {
  across,
  boundsOfPoints,
  boxRing,
  down,
  pictureBox,
  pictureRing,
  rounded,
} from "../../src/drawing/picture.js";

describe("picture lengths", () => {
  it("are millimetres to the thousandth, and y runs down", () => {
    assert.equal(across(25_400_499), 25.4);
    assert.equal(down(25_400_501), -25.401);
    assert.equal(rounded(1 / 3), 0.333);
  });

  it("are never minus zero", () => {
    assert.ok(Object.is(down(0), 0));
    assert.ok(Object.is(rounded(-0.0001), 0));
  });

  it("turn a box and its ring over alike", () => {
    const box = { left: 0, bottom: 0, right: 2_000_000, top: 1_000_000 };
    const drawn = pictureBox(box);
    assert.deepEqual(drawn, { left: 0, bottom: 0, right: 2, top: -1 });
    assert.deepEqual(boxRing(drawn), pictureRing([0, 0, 2e6, 0, 2e6, 1e6, 0, 1e6]));
  });

  it("have a box round points", () => {
    const box = { left: -1, top: -3, right: 4, bottom: 2 };
    assert.deepEqual(boundsOfPoints([-1, 2, 4, -3, 0, 0]), box);
  });
});
