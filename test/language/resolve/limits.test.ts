import assert from "node:assert/strict";
import { LIMITS } from "../../../src/model/index.js";
import { INCH, planOf, told } from "../telling.js";

const rules = (entries: string): string => `rules {\n  ${entries}\n}\n`;

describe("limits", () => {
  it("are lengths, ratios, or off", () => {
    assert.deepEqual(planOf(rules("sliver 1, half off\n  offset 1/3\n  taper 0.1")).limits, {
      sliver: { kind: "length", nm: INCH },
      half: { kind: "off" },
      offset: { kind: "ratio", p: 1, q: 3 },
      taper: { kind: "ratio", p: 1, q: 10 },
    });
  });

  it("may each be turned off, and on again", () => {
    for (const name of Object.keys(LIMITS)) {
      assert.deepEqual(planOf(rules(`${name} off`)).limits, { [name]: { kind: "off" } });
      assert.deepEqual(told(rules(`${name} on`)), []);
      assert.deepEqual(planOf(rules(`${name} on`)).limits, {});
    }
  });

  it("of several blocks are put together", () => {
    assert.deepEqual(Object.keys(planOf(rules("sliver 1") + rules("leg 2")).limits), [
      "sliver",
      "leg",
    ]);
  });

  it("may be sums", () => {
    assert.deepEqual(planOf(`let a = 1\n${rules("sliver a + 1/2")}`).limits.sliver, {
      kind: "length",
      nm: 1.5 * INCH,
    });
  });

  const faults: Record<string, string> = {
    "silver 1": `plan/limit [silver] found no limit called \`silver\`, wanted one of ${Object.keys(LIMITS).join(", ")}; did you mean \`sliver\`?`,
    "half 1/2": "plan/limit [1/2] found a number for `half`, wanted `on` or `off`",
    "offset 1in": "plan/limit [1in] found no ratio for `offset`, wanted one, such as 1/3",
    "offset -1/3": "plan/limit [-1/3] found no ratio for `offset`, wanted one, such as 1/3",
    "offset 1/100000": "plan/limit [1/100000] found no ratio for `offset`, wanted one, such as 1/3",
    "sliver -1": "plan/size [-1] found -1 in, wanted zero or more",
    "sliver 1, sliver 2": "plan/said-twice [sliver] found `sliver` again, wanted it once",
    sliver: "syntax/unexpected [] found the end of the line, wanted `off`, `on` or a length",
  };
  for (const [entries, wanted] of Object.entries(faults)) {
    it(`explain ${entries}`, () => assert.deepEqual(told(rules(entries)), [wanted]));
  }
});
