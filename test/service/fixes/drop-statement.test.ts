import assert from "node:assert/strict";
import { wallPlan } from "../plans.js";
import { mend } from "./mending.js";

const START = "    joint 1/8\n    across tile centred on wall\n    up full course from bottom\n";
const ONCE = "    movement joint over course 2\n";

describe("a statement that is taken away", () => {
  it("goes with its line", () => {
    const text = wallPlan(START + ONCE + ONCE);
    assert.equal(mend(text, "movement/no-joint", /away/).text, wallPlan(START + ONCE));
  });

  it("leaves what stands beside it", () => {
    const noted = `${ONCE.trimEnd()} # again\n`;
    const { text } = mend(wallPlan(START + ONCE + noted), "movement/no-joint", /away/);
    assert.match(text, /\n +# again\n/);
  });
});
