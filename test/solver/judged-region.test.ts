import assert from "node:assert/strict";
import { judgedRegion } from "../../src/solver/index.js";
import { resolve, parse } from "../../src/language/index.js";
import { solve } from "../../src/solver/index.js";
import { ALONE } from "../support/solve-text.js";

const wallOf = (shape: string) =>
  solve(resolve(parse(`units mm\nwall w {\n${shape}\n}`), ALONE).plan).walls[0]!;

describe("the region that pieces are judged in", () => {
  it("is level where the outline slopes, so that pieces count by their bounds", () => {
    const wall = wallOf(
      "outline 0, 0 to 600, 0 to 600, 800 to 0, 400\nleft free\nright free\ntop free",
    );
    assert.deepEqual(judgedRegion(wall.wall, wall.region).top.value, [800e6]);
    assert.equal(judgedRegion(wall.wall, wall.region).left, wall.region.left);
  });

  it("leans where a side is measured, so that the narrow end counts", () => {
    const wall = wallOf("size 600 x 800\ntop free measured 0: -9, 600: 0");
    assert.equal(judgedRegion(wall.wall, wall.region).top, wall.region.top);
  });
});
