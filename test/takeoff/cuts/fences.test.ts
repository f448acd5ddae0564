import assert from "node:assert/strict";
import { fencesOf } from "../../../src/takeoff/cuts/fences.js";
import { cutWall, mm } from "../../support/cut-wall.js";

function fences(cut: ReturnType<typeof cutWall>, label: string) {
  const { index, cut: how } = cut.piece(label);
  return fencesOf(cut.laid, index, how.box);
}

describe("how the fence is set for a piece", () => {
  const cut = cutWall({ size: "254 x 130" });

  it("leaves a width for a crosscut, from the end that stays", () => {
    assert.deepEqual(fences(cut, "B-01-03"), [{ along: "across", from: "left", keep: mm(50) }]);
    const other = cutWall({ size: "254 x 130", across: "full tile from right" });
    assert.deepEqual(fences(other, "B-01-01"), [{ along: "across", from: "right", keep: mm(50) }]);
  });

  it("leaves a height for a rip, from the edge that stays", () => {
    assert.deepEqual(fences(cut, "B-03-02"), [{ along: "up", from: "bottom", keep: mm(26) }]);
    const other = cutWall({ size: "254 x 130", up: "full course from top" });
    assert.deepEqual(fences(other, "B-01-02"), [{ along: "up", from: "top", keep: mm(26) }]);
  });

  it("leaves both for a corner", () => {
    assert.deepEqual(fences(cut, "B-03-03"), [
      { along: "across", from: "left", keep: mm(50) },
      { along: "up", from: "bottom", keep: mm(26) },
    ]);
  });

  it("is set once for a strip that is cut at both sides", () => {
    const strip = cutWall({ size: "60 x 102", across: "tile centred on wall" });
    assert.deepEqual(fences(strip, "B-01-01"), [{ along: "across", from: "left", keep: mm(60) }]);
  });

  it("isn't set for a side that slopes all the way", () => {
    const sloped = cutWall({
      size: "204 x 102",
      wall: ["right wall measured 0: -20, 100: -30 movement 0"],
    });
    assert.deepEqual(fences(sloped, "B-01-02"), []);
  });
});
