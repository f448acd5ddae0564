import assert from "node:assert/strict";
import { mend } from "./mending.js";

describe("a missing statement", () => {
  it("is added to a wall, a tile, a trim, an opening and a lay, and is missed no more", () => {
    const cases: readonly (readonly [string, RegExp, string])[] = [
      ["wall a {\n}\n", /size/, "  size 60 x 96\n"],
      ["tile a {\n  thickness 5/16\n}\n", /face/, "  face 5 7/8 x 2 7/8\n"],
      ["tile a {\n  face 3 x 6\n}\n", /thickness/, "  thickness 5/16\n"],
      ["trim a {\n  thickness 1/4\n}\n", /face/, "  face 5 7/8 x 1 7/8\n"],
      [
        "wall a {\n  size 60 x 96\n  window b {\n    size 24 x 36\n    movement 1/8\n  }\n}\n",
        /at/,
        "    at 18, 46\n",
      ],
      [
        "wall a {\n  size 60 x 96\n  window b {\n    at 18, 46\n    movement 1/8\n  }\n}\n",
        /size/,
        "    size 24 x 36\n",
      ],
    ];
    for (const [text, title, added] of cases) {
      const mended = mend(text, "plan/missing", title);
      assert.ok(mended.text.includes(added), mended.text);
      assert.ok(!mended.codes.includes("plan/missing"), text);
    }
  });

  it("is written in the plan's own units", () => {
    const { text } = mend("units mm\nwall a {\n}\n", "plan/missing", /size/);
    assert.equal(text, "units mm\nwall a {\n  size 1500 x 2400\n}\n");
  });

  it("is added to a block of one line, too", () => {
    const { text, codes } = mend("tile a { thickness 5/16 }\n", "plan/missing", /face/);
    assert.equal(text, "tile a { thickness 5/16\n  face 5 7/8 x 2 7/8\n}\n");
    assert.deepEqual(codes, []);
  });

  it("is a bond or a joint of a lay", () => {
    const plan = (lay: string): string =>
      `tile a {\n  face 6 x 3\n  thickness 5/16\n}\nwall b {\n  size 60 x 48\n  lay a {\n${lay}  }\n}\n`;
    assert.ok(
      !mend(plan("    joint 1/8\n"), "plan/missing", /bond/).codes.includes("plan/missing"),
    );
    assert.ok(
      !mend(plan("    bond stack\n"), "plan/missing", /joint/).codes.includes("plan/missing"),
    );
  });
});
