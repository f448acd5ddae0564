import assert from "node:assert/strict";
import { NM_PER, type Nm } from "../../src/measure/index.js";
import { solve, type SolvedLay } from "../../src/solver/index.js";
import { exactJointWords, spacerWords } from "../../src/sheets/spacer-words.js";
import { planOf } from "../language/telling.js";
import { wallText } from "../rules/wall-text.js";

const IN = NM_PER.inch;

/** A lay with a joint that was chosen out of a range. */
function chosen(joint: Nm): SolvedLay {
  const [lay] = solve(planOf(wallText({ joint: "1/16 to 1/8", start: "" }))).walls[0]!.lays;
  assert.ok(lay!.choice!.left.includes("joint"));
  return { ...lay!, joint };
}

// That spacers go by 1/64 in and by 0.5 mm: common practice.
describe("the spacers for a joint that was chosen", () => {
  it("are the nearest by 1/64 in, of a plan in inches or feet", () => {
    // 0.1125 in is 7.2 of 64.
    const lay = chosen((9 * IN) / 80);
    assert.equal(spacerWords(lay, "inch"), "nearest spacers 7/64 in");
    assert.equal(spacerWords(lay, "foot"), "nearest spacers 7/64 in");
  });

  it("are the nearest by half a millimetre, of any other", () => {
    // 0.1125 in is 2.8575 mm.
    const lay = chosen((9 * IN) / 80);
    for (const unit of ["mm", "cm", "m"] as const) {
      assert.equal(spacerWords(lay, unit), "nearest spacers 3 mm");
    }
    assert.equal(spacerWords(chosen(2_600_000), "mm"), "nearest spacers 2.5 mm");
  });

  it("stand beside the joint's own width, to the last digit", () => {
    assert.equal(
      exactJointWords(chosen((9 * IN) / 80), "inch"),
      "exactly 2.8575 mm, nearest spacers 7/64 in",
    );
  });

  it("aren't told where the joint is as wide as they are, or less than half of the least", () => {
    assert.equal(spacerWords(chosen((3 * IN) / 64), "inch"), null);
    assert.equal(spacerWords(chosen(2_500_000), "mm"), null);
    assert.equal(spacerWords(chosen(IN / 64 / 2 - 1), "inch"), null);
    assert.equal(exactJointWords(chosen(IN / 8), "inch"), null);
  });

  it("aren't told where the plan states the joint", () => {
    const lay = chosen((9 * IN) / 80);
    const choice = { ...lay.choice!, left: ["across"] as const };
    assert.equal(spacerWords({ ...lay, choice }, "inch"), null);
    assert.equal(spacerWords({ ...lay, choice: null }, "inch"), null);
  });
});
