import assert from "node:assert/strict";
import { wallPlan } from "../plans.js";
import { mend, mendsOf } from "./mending.js";

const CODE = "opening/flat-sill";

const shelf = (lines: string, kind = "niche"): string =>
  wallPlan(
    "    joint 1/16\n",
    `  size 60 x 47 3/16\n  ${kind} shelf {\n    at 12, 12\n    size 12 x 12\n    movement 1/8\n${lines}  }\n`,
  );

describe("a sill that doesn't drain", () => {
  it("is given the least fall where the plan states none", () => {
    const { text, codes, fix } = mend(
      shelf("    depth 3 1/2\n"),
      CODE,
      /sill fall 3\/32 in towards/,
    );
    assert.ok(text.includes("    depth 3 1/2\n    fall 3/32\n  }"));
    assert.ok(!codes.includes(CODE));
    assert.equal(fix.preferred, true);
  });

  it("has a lesser fall, or one back into the wall, changed to it", () => {
    const back = "opening/back-slope";
    for (const [fall, code] of [
      ["0", CODE],
      ["1/16", CODE],
      ["-(1/8 + 1/8)", back],
    ] as const) {
      const { text, codes } = mend(shelf(`    depth 12\n    fall ${fall}\n`), code, /fall 1\/4 in/);
      assert.ok(text.includes("    fall 1/4\n"), text);
      assert.ok(!codes.includes(CODE) && !codes.includes(back));
    }
  });

  it("is a bench's or a curb's top too", () => {
    const { text } = mend(shelf("    depth 18\n", "bench"), CODE, /Let the top fall 3\/8 in/);
    assert.ok(text.includes("    fall 3/8\n"));
  });

  it("follows the plan's own limit, but not to where nothing of the opening is left", () => {
    const of = (limit: string) => `${shelf("    depth 12\n")}rules {\n  fall ${limit}\n}\n`;
    assert.ok(mend(of("1/24"), CODE, /sill fall/).text.includes("    fall 1/2\n"));
    assert.deepEqual(
      mendsOf(of("1"), CODE).filter(({ title }) => title.startsWith("Let")),
      [],
    );
  });
});
