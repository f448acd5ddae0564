import assert from "node:assert/strict";
import { add, addText, boxPath, linePath, ringPath } from "../../../src/drawing/svg/pen.js";
import { drawn } from "../support/sheet.js";

describe("the pen", () => {
  it("writes level and upright runs short", () => {
    assert.equal(ringPath([0, 0, 10, 0, 10, -5, 3, -9]), "M0 0H10V-5L3 -9z");
    assert.equal(linePath([1, 2, 1, 8]), "M1 2V8");
    assert.equal(boxPath({ left: 0, top: -5, right: 10, bottom: 0 }), "M0 0H10V-5H0z");
  });

  it("writes attributes in the order given, numbers to the thousandth", () => {
    const svg = drawn((into) => {
      add(into, "path", { "stroke-width": 1 / 3, fill: "#ABCDEF" });
      addText(into, "text", "a", { x: 2 });
    });
    assert.equal(
      svg,
      '<g>\n<path stroke-width="0.333" fill="#ABCDEF"/>\n<text x="2">a</text>\n</g>\n',
    );
  });
});
