import assert from "node:assert/strict";
import { costOf, told, wallOf, wallText } from "../telling.js";

const holes = (count: number): string =>
  Array.from(
    { length: count },
    (_, i) => `  hole h${i} at ${1 + (i % 50)}, ${1 + Math.floor(i / 50)} across 1`,
  ).join("\n");

describe("a wall", () => {
  it("has at most five hundred holes; that there are more is told once", () => {
    assert.deepEqual(told(wallText(holes(500))), []);
    assert.deepEqual(told(wallText(holes(502))), [
      "plan/too-many [h500] found 502 holes in a wall, wanted at most 500; the others are left out",
    ]);
    assert.equal(wallOf(holes(502)).holes.length, 500);
  });

  it("has at most five hundred openings", () => {
    const openings = holes(501).replace(
      /hole (h\d+) at (\d+), (\d+) across 1/g,
      "niche $1 {\n at $2, $3\n size 1 x 1\n}",
    );
    assert.deepEqual(told(wallText(openings)), [
      "plan/too-many [h500] found 501 openings in a wall, wanted at most 500; the others are left out",
    ]);
  });

  it("of ten thousand holes is told in little time", () => {
    const text = wallText(holes(10_000));
    assert.ok(costOf(() => told(text)) < 3000);
  });
});
