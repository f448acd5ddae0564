import assert from "node:assert/strict";
import { hoverLength, hoverLet } from "../../src/service/hover-length.js";

describe("a length in figures", () => {
  it("is told in the plan's units first, then in all others", () => {
    assert.equal(hoverLength(304_800_000, "mm"), "**304.8 mm** = 12 in = 1' = 30.48 cm = 0.3048 m");
  });

  it("is a let's, a plain number, or can't be worked out", () => {
    assert.match(hoverLet("a", { kind: "length", nm: 25_400_000 }, "inch"), /\*\*1 in\*\*/);
    assert.match(
      hoverLet("a", { kind: "number", value: 0.5 }, "inch"),
      /\*\*0.5\*\*, a plain number/,
    );
    assert.match(hoverLet("a", null, "inch"), /can't be worked out/);
  });
});
