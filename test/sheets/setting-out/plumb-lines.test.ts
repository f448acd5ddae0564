import assert from "node:assert/strict";
import { plumbLines } from "../../../src/sheets/setting-out/plumb-lines.js";
import { inches, laid, type WallText, wallText } from "./plans.js";

function lines(text: WallText, ...others: string[]) {
  const { wall, lay } = laid(wallText(text), ...others);
  return plumbLines(wall, lay);
}

describe("plumb lines", () => {
  it("stand where course 1's second tile begins from each end", () => {
    // Whole tiles from 1/8; the tenth begins at 37 1/4 and is cut to 2 5/8.
    const [left, right] = lines({});
    assert.deepEqual([left!.x, right!.x], [inches(4.25), inches(37.125)]);
    assert.deepEqual(left!.ends, [{ course: 1, width: inches(4), seen: inches(4) }]);
    assert.deepEqual(right!.ends, [{ course: 1, width: inches(2.625), seen: inches(2.625) }]);
  });

  it("tell how far the bare wall's end lies from them at each reading", () => {
    const [, right] = lines({ right: "wall measured 0: 1/4, 24: -1/4" });
    assert.deepEqual(right!.fromEnd, [
      { at: 0, distance: inches(3.125) },
      { at: inches(24), distance: inches(2.625) },
    ]);
  });

  it("tell the ends of the courses that alternate, and how much is seen of them", () => {
    const side = wallText({ name: "side", right: "corner back over" });
    const [left] = lines({ bond: "running 1/2", left: "corner side under" }, side);
    // The side wall's tile and bed, 1/2 in, cover the end from its joint of 1/8 on.
    assert.deepEqual(left!.ends, [
      { course: 1, width: inches(4), seen: inches(3.625) },
      { course: 2, width: inches(1.9375), seen: inches(1.5625) },
    ]);
  });

  it("are none on a wall without a tile between its end ones", () => {
    assert.deepEqual(lines({ size: "8 x 24" }), []);
  });
});
