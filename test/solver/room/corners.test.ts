import assert from "node:assert/strict";
import { cornerPairs } from "../../../src/solver/room/corners.js";
import { planOf } from "../../language/telling.js";

const room = (sides: readonly string[]): string =>
  `tile a {\n face 6 x 3\n thickness 1/4\n}\n${sides
    .map(
      (each, i) => `wall w${i} {\n size 40 x 40\n${each}\nlay a {\n bond stack\n joint 1/16\n}\n}`,
    )
    .join("\n")}`;

describe("the corners of four walls in a ring", () => {
  it("are four, in the order in which walls come to them", () => {
    const sides = [0, 1, 2, 3].map(
      (i) => `left corner w${(i + 3) % 4} over\nright corner w${(i + 1) % 4} under`,
    );
    assert.deepEqual(cornerPairs(planOf(room(sides)).walls), [
      { a: 0, b: 3, end: "left" },
      { a: 0, b: 1, end: "right" },
      { a: 1, b: 2, end: "right" },
      { a: 2, b: 3, end: "right" },
    ]);
  });
});
