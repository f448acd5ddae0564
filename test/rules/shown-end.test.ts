import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { shownEnd } from "../../src/rules/shown-end.js";
import { cornersOf, cornerText, type CornerText } from "./corner-text.js";

/** The ends of course 1 at the corner, in inches: shown and cut, of the covered wall and of the other. */
function ends(parts: CornerText): ([number, number] | null)[] {
  const [corner] = cornersOf(cornerText(parts));
  const { under, over } = corner!;
  return [under, over].map(({ lay, side }) => {
    const end = shownEnd(lay, 0, side);
    return end && [end.shown / NM_PER.inch, end.cut / NM_PER.inch];
  });
}

describe("the end of a course at a corner", () => {
  it("is the cut less what the other wall's tile covers: 5 9/16 cut, 7/16 build, 1/8 gap shows 5 1/4", () => {
    // The figures are trade.md's, in its account of which wall covers which: common practice.
    const thick = { bed: "1/8", thickness: "5/16" };
    // 60 in less 1/8 in: the cut begins at 54 5/16 in, and a joint of 1/16 in stands before it.
    const [covered] = ends({ ...thick, across: "joint centred at 54 5/16 - 1/32" });
    assert.deepEqual(covered, [5.25, 5.5625]);
  });

  it("is the next piece where the other wall's tile covers the last one wholly", () => {
    const thick = { bed: "1/8", thickness: "5/16" };
    // The last piece is 1/4 in wide, of which nothing is seen.
    const [covered] = ends({ ...thick, across: "joint centred at 59 5/8 - 1/32" });
    assert.deepEqual(covered, [6 - 1 / 16 + 1 / 16, 6]);
  });

  it("is nothing where an opening cuts the piece as well", () => {
    const wall = "window sash {\n at 1, 0\n size 30 x 20\n movement 1/8\n}";
    assert.equal(ends({ side: { wall } })[1], null);
  });
});
