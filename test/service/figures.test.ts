import assert from "node:assert/strict";
import { Figures } from "../../src/service/figures.js";
import { inches } from "../support/layout.js";

describe("figures", () => {
  it("are told in the units that are wanted", () => {
    assert.equal(new Figures("inch").length(inches(46.25)), "46 1/4 in");
    assert.equal(new Figures("mm").length(inches(46.25)), "1174.8 mm");
  });

  it("are told across, then up, and from the lower to the upper", () => {
    const figures = new Figures("mm");
    assert.equal(figures.size(598_000_000, 298_000_000), "598 mm x 298 mm");
    assert.equal(figures.reach(4_000_000, 600_000_000), "4 mm to 600 mm");
  });
});
