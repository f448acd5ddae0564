import assert from "node:assert/strict";
import { codesOf, mend, mendsOf } from "./mending.js";

const CODE = "trim/too-thin";

const TRIM = (name: string, thickness: string): string =>
  `trim ${name} {\n  face 8 x 1/2\n  thickness ${thickness}\n}\n`;

const plan = (trims: string, left = "free trim thin"): string => `units inch
tile field {
  face 5 7/8 x 5 7/8
  thickness 3/8
  variation 1/32
}
${trims}wall back {
  size 48 x 36
  left ${left}
  right wall movement 1/8
  bottom floor movement 1/8
  top ceiling movement 1/8
  window sash {
    at 19, 12
    size 10 x 8
    frame thin mitre
    movement 1/8
  }
  lay field {
    bond stack
    joint 1/8
  }
}
`;

// How far one edge may stand proud: ANSI A108.02 4.3.7, quoted in constructionspecifier.com tile and
// stone lippage; that trim is taken to the tile's thickness: common practice.
describe("trim that the tile stands proud of", () => {
  const trims =
    TRIM("thin", "1/4") + TRIM("proud", "1/2") + TRIM("flush", "3/8") + TRIM("near", "11/32");

  it("gives way to the plan's trims that are thick enough, the nearest to flush first", () => {
    const mends = mendsOf(plan(trims), CODE).filter(({ title }) => title.startsWith("Take trim"));
    assert.deepEqual(
      [...new Set(mends.map(({ title }) => title))],
      [
        "Take trim near, 11/32 in thick",
        "Take trim flush, 3/8 in thick",
        "Take trim proud, 1/2 in thick",
      ],
    );
  });

  it("is changed at the end of a wall, and in a frame", () => {
    const ends = mend(plan(trims), CODE, /flush/);
    assert.match(ends.text, /left free trim flush\n/);
    const frame = mend(plan(trims, "wall movement 1/8"), CODE, /flush/);
    assert.match(frame.text, /frame flush mitre\n/);
    assert.ok(!frame.codes.includes(CODE));
  });

  it("stays where the plan has none", () => {
    const text = plan(TRIM("thin", "1/4") + TRIM("thinner", "1/8"));
    assert.ok(codesOf(text).includes(CODE));
    assert.deepEqual(
      mendsOf(text, CODE).filter(({ title }) => title.startsWith("Take trim")),
      [],
    );
  });
});
