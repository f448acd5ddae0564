import assert from "node:assert/strict";
import { FROM_CORNER, wallText } from "../../rules/wall-text.js";
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

  it("is laid at a third in the lay that it is told of where a wall is parted in two", () => {
    const dado = "covers bottom to 24\n between 1/8";
    const over = `}\n lay field {\n bond running 1/2\n joint 1/8\n ${FROM_CORNER}`;
    const text = wallText({
      ...{ face: "24 x 6", size: "96 x 48", bond: "running 1/3", lay: `${dado}\n ${over}` },
    });
    const mended = mend(text, WIDE, /offset of 1\/3$/);
    assert.equal(mended.text, text.replace("running 1/2", "running 1/3"));
    assert.ok(!mended.codes.includes(WIDE));
  });

  it("is laid at what suits every tile of a list of courses", () => {
    const plank = "tile plank {\n face 24 x 6\n thickness 5/16\n}";
    const list = "courses 2 of field, rest of plank";
    const text = wallText({
      ...{ face: "12 x 6", size: "96 x 48", bond: "running 1/2", plan: plank, lay: list },
    });
    const mended = mend(text, WIDE, /offset of 1\/3$/);
    assert.match(mended.text, /bond running 1\/3\n/);
    assert.ok(!mended.codes.includes(WIDE) && !mended.codes.includes(STACKED));
  });

  it("is not moved under courses that are set", () => {
    const text = wallText({
      ...{ face: "24 x 6", size: "96 x 48", bond: "running 1/2", lay: "set courses 1 to 2" },
    });
    const mends = mendsOf(text, WIDE).map(({ title }) => title);
    assert.ok(mends.length > 0 && mends.every((title) => title.startsWith("Allow")), mends.join());
  });

  const niche = (lining: string) =>
    wallText({
      ...{ face: "6 x 6", size: "96 x 60", bond: "running 1/2" },
      plan: "tile plank {\n face 24 x 6\n thickness 5/16\n}",
      wall: `niche shelf {\n at 12, 24\n size 60 x 24\n depth 4\n movement 1/8\n ${lining}\n}`,
    });

  it("is laid at a third inside an opening, where that is stated and where it follows from the wall's", () => {
    for (const lining of ["back plank running 1/2 joint 1/8", "back plank joint 1/8"]) {
      const mended = mend(niche(lining), WIDE, /offset of 1\/3$/);
      assert.match(mended.text, /back plank running 1\/3 joint 1\/8\n/);
      assert.ok(!mended.codes.includes(WIDE));
    }
  });

  it("is left to the writer where all of an opening is said in one word, which would bond its sides", () => {
    const titles = mendsOf(niche("inside plank"), WIDE).map(({ title }) => title);
    assert.ok(titles.length > 0 && !titles.some((title) => title.startsWith("Lay")));
  });
});
