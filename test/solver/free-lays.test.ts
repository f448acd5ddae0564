import assert from "node:assert/strict";
import { freeLays } from "../../src/solver/free-lays.js";
import { planOf } from "../language/telling.js";
import { type PanelText, panelText } from "./free-wall-text.js";

/** The dado ends at 12 1/8 in, the field begins at 12 1/4. */
function found(parts: PanelText): ReturnType<typeof freeLays> {
  const plan = planOf(panelText(parts));
  return freeLays(plan, plan.walls[0]!);
}

const niche = (at: string): string => `niche n {\n at ${at}\n size 6 x 4\n movement 1/8\n }`;

describe("the lay that settles what a wall leaves free", () => {
  it("is the one that has all that an opening may take, its joint included", () => {
    const { openings, unsettled } = found({ openings: niche("8, 12 3/8 to 20") });
    assert.deepEqual([...openings], [["field", [0]]]);
    assert.deepEqual(unsettled, []);
    assert.deepEqual([...found({ openings: niche("8, 2 to 8") }).openings], [["dado", [0]]]);
  });

  it("is none where that may come past a lay's edge, by a nanometre", () => {
    for (const at of ["8, 12 3/8 - 0.000001mm to 20", "8, 2 to 8 + 0.000001mm"]) {
      const { openings, unsettled } = found({ openings: niche(at) });
      assert.equal(openings.size, 0, at);
      assert.deepEqual(
        unsettled.map(({ opening, why }) => [opening, why]),
        [["n", "spans"]],
      );
    }
  });

  it("doesn't end where the wall does: there it is kept inside as on any wall", () => {
    assert.deepEqual([...found({ openings: niche("0 to 20, 20") }).openings], [["field", [0]]]);
  });

  it("is the one that ends higher where the tile may", () => {
    assert.equal(found({ height: "30 to 36" }).stop, "field");
    const { stop, unsettled } = found({ height: "30 to 36", over: "courses 3" });
    assert.equal(stop, null);
    assert.deepEqual(unsettled, [{ wall: "back", opening: null, lays: [], why: "outside" }]);
  });

  it("is none round a panel, nor past it, but the panel for what lies in it", () => {
    const more = "lay dado {\n bond stack\n joint 1/8\n at 10, 16\n size 12 x 12\n }";
    const inPanel = found({ more, openings: niche("12 to 14, 18 to 20") });
    assert.deepEqual([...inPanel.openings], [["dado-2", [0]]]);
    const past = found({ more, openings: niche("12 to 24, 18") });
    assert.deepEqual(past.unsettled[0]!.lays, ["dado-2", "field"]);
  });
});
