import assert from "node:assert/strict";
import { waterOf } from "../../../src/sheets/setting-out/water.js";
import { laid, wallText } from "./plans.js";

const SASH = "  window sash {\n    at 14, 9\n    size 10 x 7\n    movement 1/8\n  }";

describe("what a plan says of water", () => {
  it("is wet over a tub or a pan, and glazed where a window is in such a plan", () => {
    assert.deepEqual(waterOf(laid(wallText()).plan.plan), { wet: false, glazed: false });
    assert.deepEqual(waterOf(laid(wallText({ bottom: "tub" })).plan.plan), {
      wet: true,
      glazed: false,
    });
    assert.deepEqual(waterOf(laid(wallText({ inside: SASH })).plan.plan), {
      wet: false,
      glazed: false,
    });
    const both = laid(wallText({ bottom: "pan" }), wallText({ name: "side", inside: SASH }));
    assert.deepEqual(waterOf(both.plan.plan), { wet: true, glazed: true });
  });
});
