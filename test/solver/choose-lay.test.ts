import assert from "node:assert/strict";
import { chooseFor } from "../../src/solver/choose-lay.js";
import { layRegion } from "../../src/solver/lay-region.js";
import { choose } from "../../src/solver/choose/index.js";
import { layOf, wallOf } from "./several-lays.js";

describe("what is chosen for a lay in its place", () => {
  it("is the best start on what of the wall it has", () => {
    const lay = layOf("field", { across: null });
    const { plan, wall } = wallOf([lay]);
    const plot = { plan, wall, lay, placed: [] };
    assert.deepEqual(
      chooseFor(plot, new Map()),
      choose(plan, wall, lay, (joint) => layRegion(plot, joint)),
    );
  });

  it("waits for a wall that isn't solved as if it were open", () => {
    const wrapped = layOf("field", {
      across: { kind: "wrapped", wall: "side", corner: "left", joint: "added" },
    });
    const { plan, wall } = wallOf([wrapped]);
    const { across, choice } = chooseFor({ plan, wall, lay: wrapped, placed: [] }, new Map());
    assert.ok(!("wall" in across));
    assert.deepEqual(choice!.left, ["across"]);
  });
});
