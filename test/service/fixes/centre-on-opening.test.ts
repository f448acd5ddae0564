import assert from "node:assert/strict";
import { wallPlan } from "../plans.js";
import { mend } from "./mending.js";

const CODE = "opening/off-centre";
const SASH =
  "  size 60 x 48\n  window sash {\n    at 18 1/4, 20\n    size 24 x 12\n    movement 1/8\n  }\n";

describe("an opening nearly on the line of the lay", () => {
  it("is what the lay is centred on, tile or joint as before", () => {
    const start =
      "    joint 1/16\n    across joint centred on wall\n    up full course from bottom\n";
    const { codes, text, fix } = mend(wallPlan(start, SASH), CODE, /^Centre the lay on sash/);
    assert.ok(text.includes("    across joint centred on sash\n"));
    assert.ok(!codes.includes(CODE));
    assert.equal(fix.preferred, false);
  });

  it("is that in place of a place", () => {
    const start = "    joint 1/16\n    across tile centred at 30\n    up full course from bottom\n";
    assert.ok(!mend(wallPlan(start, SASH), CODE, /centred on sash$/).codes.includes(CODE));
  });
});
