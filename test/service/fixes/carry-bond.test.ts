import assert from "node:assert/strict";
import { cornerPlan } from "./corner-plan.js";
import { mend, mendsOf } from "./mending.js";

const CODE = "corner/bond-broken";
const UP = "    up joint at line\n";

/** The bond breaks at the corner: the side wall's tile stands as if there were none. */
const broken = (bond?: string): string =>
  cornerPlan(
    `    across tile centred on wall\n${UP}`,
    `    across tile centred at 20\n${UP}`,
    bond,
  );

describe("a bond that breaks at a corner", () => {
  for (const title of [/joint added/, /joint swallowed/, /^Mirror/]) {
    for (const bond of ["running 1/2", "stack"]) {
      it(`goes on in ${bond}: ${title.source}`, () => {
        const { codes, fix, text } = mend(broken(bond), CODE, title);
        assert.ok(!codes.includes(CODE), text);
        assert.ok(!codes.includes("corner/courses-miss"));
        assert.equal(fix.edits.length, 1);
      });
    }
  }

  it("says it in the plan, or by its place where the other wall goes on from this one", () => {
    const titles = mendsOf(broken(), CODE).map(({ title }) => title);
    assert.deepEqual(titles.slice(0, 3), [
      "Wrap the bond, the corner's joint added: across wrapped from back added",
      "Wrap the bond, the corner's joint swallowed: across wrapped from back swallowed",
      "Mirror the bond at the corner: across mirrored from back",
    ]);
    assert.ok(!mend(broken(), CODE, /joint added/).codes.includes("plan/start-circle"));
  });

  it("is the other way round in a wall that meets the corner at its right", () => {
    const text = broken()
      .replace("right corner side under", "left corner side under")
      .replace("left corner back over", "right corner back over");
    for (const title of [/joint added/, /joint swallowed/, /^Mirror/]) {
      assert.ok(!mend(text, CODE, title).codes.includes(CODE), title.source);
    }
  });

  it("is wrapped, but not mirrored, where each course goes on to the right of the one below", () => {
    const titles = mendsOf(broken("running 1/3"), CODE).map(({ title }) => title);
    assert.ok(titles.some((title) => title.includes("joint added")));
    assert.ok(!titles.some((title) => title.startsWith("Mirror")));
  });
});
