import assert from "node:assert/strict";
import { wallText } from "../../rules/wall-text.js";
import { mend, mendsOf } from "./mending.js";

const WIDE = "bond/offset-over-third";
const STACKED = "joint/stacked";

const plan = (face: string, bond: string, rules = "") =>
  wallText({ face, bond: `running ${bond}`, size: "96 x 48", plan: rules });

// A third at most for tile over 15 in: ANSI A108.02 4.3.8.2, quoted in fcimag.com/articles/96103; a quarter at
// least between head joints: common practice.
describe("a bond whose offset is wrong for its tile", () => {
  it("is laid at a third where long tile is offset by half", () => {
    const mended = mend(plan("24 x 6", "1/2"), WIDE, /^Lay the bond at an offset of 1\/3$/);
    assert.match(mended.text, /bond running 1\/3\n/);
    assert.ok(!mended.codes.includes(WIDE) && !mended.codes.includes(STACKED));
  });

  it("is laid at a quarter where that is nearest to what brings joints too close", () => {
    const mended = mend(plan("6 x 3", "1/5"), STACKED, /offset of 1\/4$/);
    assert.match(mended.text, /bond running 1\/4\n/);
    assert.ok(!mended.codes.includes(STACKED));
  });

  it("keeps to the plan's own limits", () => {
    const own = "rules {\n offset 1/4\n}";
    assert.match(mend(plan("24 x 6", "1/2", own), WIDE, /^Lay/).text, /bond running 1\/4\n/);
    const none = "rules {\n offset 1/8\n stacked 1/4\n}";
    assert.deepEqual(
      mendsOf(plan("24 x 6", "1/2", none), WIDE).filter(({ title }) => title.startsWith("Lay")),
      [],
    );
  });
});
