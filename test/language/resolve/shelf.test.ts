import assert from "node:assert/strict";
import { planOf, told } from "../telling.js";

const FILES = {
  "plans/shop.tileplan": "units mm\nsaw {\n  rip 600\n}\ngrout {\n  density 1.6\n}\n",
  "plans/site.tileplan": "grout {\n  density 1.8\n}\n",
  "plans/both.tileplan": 'use "shop.tileplan"\n',
};

describe("what is stated once", () => {
  it("comes with a used file, in that file's units", () => {
    const plan = planOf('use "shop.tileplan"\n', FILES);
    assert.equal(plan.saw!.longest, 600_000_000);
    assert.equal(plan.grout!.origin.file, "plans/shop.tileplan");
    assert.equal(plan.mortar, null);
  });

  it("is the plan's own where the plan says it, without a word", () => {
    const text = 'use "shop.tileplan"\nuse "site.tileplan"\ngrout {\n  density 2\n}\n';
    assert.deepEqual(told(text, FILES), []);
    assert.equal(planOf(text, FILES).grout!.density, 2_000);
  });

  it("is told where two used files say it, and the first one's stays", () => {
    const text = 'use "shop.tileplan"\nuse "site.tileplan"\n';
    assert.deepEqual(told(text, FILES), [
      'plan/said-twice ["site.tileplan"] found `grout` in `site.tileplan` too, wanted it in one used file, or in this plan',
    ]);
    assert.equal(planOf(text, FILES).grout!.density, 1_600);
  });

  it("may come by two ways", () => {
    assert.deepEqual(told('use "shop.tileplan"\nuse "both.tileplan"\n', FILES), []);
  });
});
