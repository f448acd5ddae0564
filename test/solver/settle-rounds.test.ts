import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { Searches } from "../../src/solver/searches.js";
import { settleInRounds } from "../../src/solver/settle-rounds.js";
import type { PanelText } from "./free-wall-text.js";
import { lonePanel } from "./lone-panel.js";

const IN = NM_PER.inch;

function settled(parts: PanelText) {
  const panel = lonePanel(parts);
  return {
    ...panel,
    ...settleInRounds(panel.plan, panel.all, panel.plan.wishes, 1, new Searches(null)),
  };
}

describe("lays that are settled in rounds", () => {
  it("all have a start in the end, those that wait for others too", () => {
    const { known, wall, room } = settled({
      over: "courses 1, 1 of dado, 1 of field",
      joint: "1/8 to 1/4",
    });
    // What goes on from the field is left for its joint alone, which it gets with the field.
    assert.deepEqual([...known.settled(wall).starts.keys()].sort(), [
      ...["dado", "dado-2", "field", "field-2"],
    ]);
    assert.equal(room.capped, false);
    assert.ok(room.weighed > 0);
  });

  it("begin past the joint that the one under them got", () => {
    const { known, lone } = settled({ wishes: "prefer {\n few cuts\n}", joint: "1/8 to 1/4" });
    const [dado, field] = ["dado", "field"].map((name) => known.foundOf(lone(name))!.chosen.joint);
    const { region } = known.standing(lone("field"));
    assert.equal(region.bounds.bottom, 12 * IN + 2 * dado!);
    assert.ok(field! >= IN / 8 && field! <= IN / 4);
  });

  it("are not searched where all of them is stated", () => {
    const start = "across full tile from left";
    const { known, room, lone } = settled({
      dado: start,
      field: `${start}\n up full course from bottom`,
    });
    assert.deepEqual(room, { weighed: 0, capped: false });
    assert.equal(known.foundOf(lone("dado")), null);
  });
});
