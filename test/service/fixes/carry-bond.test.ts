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
