import assert from "node:assert/strict";
import { arrange } from "../../../src/drawing/scene/arrangement.js";
import { planOf, solvedOf, wallText } from "../support/scene-of.js";

const arrangementOf = (...sizes: string[]) =>
  arrange(
    solvedOf(
      planOf(sizes.map((size, i) => wallText("", `w${i}`).replace("40 x 30", size)).join("\n")),
    ).plan.walls,
  );

describe("the arrangement of a plan's walls", () => {
  it("has text of a sixtieth of a tall wall, in steps of preferred numbers (ISO 3, R20)", () => {
    assert.equal(arrangementOf("60 x 96").em, 40);
    assert.equal(arrangementOf("60 x 97").em, 40);
    assert.equal(arrangementOf("600 x 960").em, 400);
  });

  it("keeps a shower's three walls in one row, with text that can be read", () => {
    const { rows, em } = arrangementOf("36 x 96", "60 x 96", "36 x 96");
    assert.deepEqual(rows, [3]);
    assert.ok(em > 40 && em < 60, `${em}`);
  });

  it("puts many wide walls in rows, in order", () => {
    const { rows } = arrangementOf("60 x 48", "64 x 36", "30 x 24", "20 x 12");
    assert.deepEqual(rows, [2, 2]);
    assert.ok(arrangementOf(...Array.from({ length: 9 }, () => "60 x 40")).rows.length > 1);
  });

  it("counts every wall once", () => {
    for (let count = 0; count < 14; count++) {
      const sizes = Array.from({ length: count }, (_, i) => `${10 + 7 * (i % 5)} x ${12 + i}`);
      const { rows } = arrangementOf(...sizes);
      assert.equal(
        rows.reduce((sum, each) => sum + each, 0),
        count,
      );
    }
  });
});
