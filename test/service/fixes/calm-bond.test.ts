import assert from "node:assert/strict";
import { codesOf, mend, mendsOf } from "./mending.js";
import { wallPlan } from "../plans.js";

const CODE = "lippage/expected";

const bowed = (warpage: string, bond: string, joint = "3/16"): string =>
  `tile plank {\n  face 11 5/8 x 5 5/8\n  thickness 3/8\n  warpage ${warpage}\n}\n` +
  wallPlan(`    joint ${joint}\n`)
    .replace("lay pressed", "lay plank")
    .replace("bond stack", `bond ${bond}`);

// ANSI A108.02 4.3.7, quoted in constructionspecifier.com tile and stone lippage: 1/32 in with joints
// under 1/4 in, 1/16 in from there on. That a smaller offset shows less of a bow: common practice.
describe("a bow that shows at the bond's offset", () => {
  it("is laid at the largest offset at which it doesn't", () => {
    // 4 f (1 - f) of the bow: 8/9 at a third, 3/4 at a quarter.
    const third = mend(bowed("9/256", "running 1/2"), CODE, /offset/);
    assert.match(third.text, /bond running 1\/3\n/);
    assert.ok(!third.codes.includes(CODE));
    const quarter = mend(bowed("10/256", "running 1/3"), CODE, /offset/);
    assert.match(quarter.text, /bond running 1\/4\n/);
    assert.ok(!quarter.codes.includes(CODE));
  });

  it("is allowed more by a joint of 1/4 in, which replaces a range as a whole", () => {
    for (const joint of ["3/16", "1/8 to 3/16"]) {
      const { text, codes, fix } = mend(bowed("1/16", "running 1/2", joint), CODE, /Widen/);
      assert.equal(fix.title, "Widen the joint to 1/4 in");
      assert.match(text, /joint 1\/4\n/);
      assert.ok(!codes.includes(CODE));
    }
  });

  it("has only mends that leave nothing of it", () => {
    const text = bowed("1/8", "running 1/2");
    assert.ok(codesOf(text).includes(CODE));
    assert.deepEqual(
      mendsOf(text, CODE).filter(({ title }) => /offset|Widen/.test(title)),
      [],
    );
  });

  it("is calmed for the bowed tile of a list of courses, whichever run it is", () => {
    const list = bowed("9/256", "running 1/2").replace("lay plank", "lay pressed");
    const text = list.replace(/(joint 3\/16)/, "$1\n    courses 2 of pressed, rest of plank");
    const { text: after, codes } = mend(text, CODE, /offset/);
    assert.match(after, /bond running 1\/3\n/);
    assert.ok(!codes.includes(CODE));
  });

  it("is calmed by the joint of a lining, too", () => {
    const niche =
      "  niche n {\n    at 12, 24\n    size 36 x 12\n    depth 4\n    movement 1/8\n    back plank running 1/2 joint 3/16\n  }\n";
    const text = bowed("1/16", "stack").replace("lay plank", `${niche.trim()}\n  lay pressed`);
    const { text: after, codes } = mend(text, CODE, /Widen/);
    assert.match(after, /back plank running 1\/2 joint 1\/4\n/);
    assert.ok(!codes.includes(CODE));
  });
});
