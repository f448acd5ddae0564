import assert from "node:assert/strict";
import loadHighs from "highs";
import { NM_PER } from "../../../src/measure/index.js";
import { measureRoom, solve } from "../../../src/solver/index.js";
import { planOf } from "../../language/telling.js";
import { programOf, room, type Rows } from "./courses-program.js";

/** How near the solver of programs comes to its own answer, mm. */
const NEAR = 0.001;

describe("courses of three walls at one height, as a mixed-integer program", () => {
  let highs: Awaited<ReturnType<typeof loadHighs>>;
  before(async () => {
    highs = await loadHighs();
  });

  function least(rows: Rows, end: "top" | "bottom", settled: string[]): number {
    const options = {
      output_flag: false,
      mip_rel_gap: 0,
      mip_abs_gap: 0,
      mip_feasibility_tolerance: 1e-9,
      primal_feasibility_tolerance: 1e-9,
    } as const;
    const result = highs.solve(programOf(rows, end, settled), options);
    assert.equal(result.Status, "Optimal");
    return result.ObjectiveValue;
  }

  for (const seed of [1, 2, 3, 4, 5, 6]) {
    it(`misses whole courses by no more and no less (${seed})`, () => {
      const { text, rows } = room(seed);
      const plan = planOf(text);
      const { plan: settled, walls, room: found } = solve(plan);
      const { misses } = measureRoom(settled, walls, plan.wishes);
      const top = least(rows, "top", []);
      const missed = rows.walls.map((_, w) => `m_top_${w}`).join(" + ");
      const bottom = least(rows, "bottom", [`${missed} <= ${top + NEAR / 10}`]);
      const told = JSON.stringify({
        misses: misses.map((nm) => nm / NM_PER.mm),
        top,
        bottom,
        found: { ...found, asked: null },
      });
      assert.equal(misses[0], 0, told);
      assert.ok(Math.abs(misses[1]! / NM_PER.mm - top) < NEAR, told);
      assert.ok(Math.abs(misses[2]! / NM_PER.mm - bottom) < 20 * NEAR, told);
    });
  }
});
