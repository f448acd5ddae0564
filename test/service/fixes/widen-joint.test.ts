import assert from "node:assert/strict";
import { wallPlan } from "../plans.js";
import { codesOf, mend, mendsOf } from "./mending.js";

const varied = (lay: string): string =>
  `tile rough {\n  face 5 7/8 x 2 7/8\n  thickness 5/16\n  variation 1/32\n}\n${wallPlan(lay).replace("lay pressed", "lay rough")}`;

const long = (lay: string): string =>
  `tile plank {\n  face 23 5/8 x 11 5/8\n  thickness 3/8\n  warpage 1/32\n  edges rectified\n}\n${wallPlan(lay).replace("lay pressed", "lay plank").replace("bond stack", "bond running 1/3")}`;

describe("a joint that is too narrow", () => {
  it("is widened to three times the variation, exactly", () => {
    const { text, codes } = mend(varied("    joint 1/16\n"), "joint/too-narrow", /3\/32/);
    assert.ok(text.includes("    joint 3/32\n"));
    assert.ok(!codes.includes("joint/too-narrow"));
  });

  it("keeps the upper end of a range that is wide enough", () => {
    const { text } = mend(varied("    joint 1/32 to 3/16\n"), "joint/too-narrow", /Widen/);
    assert.match(text, /joint \S+ to 3\/16\n/);
    assert.ok(!codesOf(text).includes("joint/too-narrow"));
  });

  it("is widened by the warpage of long tile as well, once for both rules", () => {
    const { text, codes, fix } = mend(long("    joint 1/32\n"), "joint/long-tile", /5\/32/);
    assert.ok(text.includes("    joint 5/32\n"));
    assert.equal(fix.preferred, true);
    assert.ok(!codes.includes("joint/long-tile") && !codes.includes("joint/too-narrow"));
  });

  it("replaces a range that is too narrow as a whole", () => {
    const { text, codes } = mend(varied("    joint 1/32 to 1/16\n"), "joint/too-narrow", /Widen/);
    assert.ok(!text.includes(" to "));
    assert.ok(!codes.includes("joint/too-narrow"));
  });

  it("is widened for every tile of a list of courses at once", () => {
    const list = varied("    joint 1/16\n    courses 2 of pressed, rest of rough\n");
    const { text, codes } = mend(
      list.replace("lay rough", "lay pressed"),
      "joint/too-narrow",
      /3\/32/,
    );
    assert.ok(text.includes("    joint 3/32\n"));
    assert.ok(!codes.includes("joint/too-narrow"));
  });

  it("stays as it is over courses that are set with it", () => {
    const start = "    across full tile from left\n    up full course from bottom\n";
    const text = varied(`    joint 1/16\n${start}    set courses 1 to 2\n`);
    const titles = mendsOf(text, "joint/too-narrow").map(({ title }) => title);
    assert.deepEqual(titles, ["Allow joint/too-narrow here"]);
  });

  const lined = (lining: string): string => {
    const niche = `niche n {\n    at 12, 24\n    size 24 x 12\n    depth 4\n    movement 1/8\n    ${lining}\n  }\n`;
    return varied("    joint 1/16\n").replace("lay rough", `${niche}  lay pressed`);
  };

  it("is widened inside an opening, where the lining states it and where it doesn't", () => {
    const stated = mend(lined("back rough stack joint 1/16"), "joint/too-narrow", /3\/32/);
    assert.ok(stated.text.includes("    back rough stack joint 3/32\n"));
    for (const [before, after] of [
      ["", ""],
      [" stack", ""],
      [" stack", " across full tile from left"],
      ["", " up full course from top"],
    ] as const) {
      const usual = mend(lined(`back rough${before}${after}`), "joint/too-narrow", /3\/32/);
      const wanted = `    back rough${before} joint 3/32${after}\n`;
      assert.ok(usual.text.includes(wanted), usual.text);
      assert.ok(!usual.codes.includes("joint/too-narrow"));
    }
    assert.ok(!stated.codes.includes("joint/too-narrow"));
  });
});
