import assert from "node:assert/strict";
import { clustersOf, partsOf } from "../../../src/solver/room/clusters.js";
import { type CornerPair, cornerPairs } from "../../../src/solver/room/corners.js";
import { planOf } from "../../language/telling.js";

const STOCK = ["a", "b"].map((name) => `tile ${name} {\n face 6 x 3\n thickness 1/4\n}`).join("\n");

function wallText(name: string, tile: string, joint: string, sides = ""): string {
  const lay = tile ? `lay ${tile} {\n bond stack\n joint ${joint}\n}` : "";
  return `wall ${name} {\n size 40 x 40\n${sides}\n${lay}\n}`;
}

describe("parts that ties hold together", () => {
  it("are told in rising order, each number in one", () => {
    assert.deepEqual(partsOf([0, 1, 2, 3, 4], [[3, 1], [4, 3], [0]]), [[0], [1, 3, 4], [2]]);
  });
});

describe("clusters", () => {
  it("are walls of one tile in one range of joints, and those whose courses are to meet", () => {
    const plan = planOf(
      [
        STOCK,
        wallText("w0", "a", "1/16 to 1/8"),
        wallText("w1", "b", "1/16 to 1/8"),
        wallText("w2", "a", "1/16 to 1/8"),
        wallText("w3", "a", "1/16"),
        wallText("w4", "", ""),
        wallText("w5", "a", "1/16"),
      ].join("\n"),
    );
    const numbers = (links: Omit<CornerPair, "end">[]) =>
      clustersOf(
        plan.walls,
        links.map((link) => ({ ...link, end: "right" })),
      ).map(({ walls, groups }) => [walls, groups.map((group) => group.walls)]);
    assert.deepEqual(numbers([]), [
      [[0, 2], [[0, 2]]],
      [[1], [[1]]],
      [[3], [[3]]],
      [[5], [[5]]],
    ]);
    assert.deepEqual(numbers([{ a: 1, b: 3 }])[1], [
      [1, 3],
      [[1], [3]],
    ]);
  });
});

describe("the corners of a room", () => {
  it("are told once each, also where two walls meet at both ends, and only of laid walls", () => {
    const plan = planOf(
      [
        STOCK,
        wallText("w0", "a", "1/16", "left corner w1 over\nright corner w1 over"),
        wallText("w1", "a", "1/16", "left corner w0 under\nright corner w0 under"),
        wallText("w2", "a", "1/16", "left corner w3 over"),
        wallText("w3", "", "", "right corner w2 under"),
      ].join("\n"),
    );
    assert.deepEqual(cornerPairs(plan.walls), [
      { a: 0, b: 1, end: "left" },
      { a: 0, b: 1, end: "right" },
    ]);
  });
});
