import { WALL } from "../sheets/wall.js";
import { solveClean } from "../support/solve-text.js";
import assert from "node:assert/strict";
import type { Opening } from "../../src/model/index.js";
import { cutterAt, cutterKey, placeName } from "../../src/rules/cutter.js";
import type { Takeaway } from "../../src/solver/index.js";

const sash: Takeaway = {
  opening: { kind: "window", name: "sash" } as Opening,
  box: { left: 10, bottom: 10, right: 20, top: 20 },
};
const takeaways = [sash];
const box = (left: number, bottom: number, right: number, top: number) => ({
  left,
  bottom,
  right,
  top,
});

const [lay] = solveClean(WALL).solved.walls[0]!.lays;

describe("what cuts a piece", () => {
  it("is the opening whose side it stands on", () => {
    assert.equal(cutterAt(takeaways, box(5, 12, 10, 15), "right"), sash);
    assert.equal(cutterAt(takeaways, box(20, 12, 25, 15), "left"), sash);
    assert.equal(cutterAt(takeaways, box(12, 5, 15, 10), "top"), sash);
    assert.equal(cutterAt(takeaways, box(12, 20, 15, 25), "bottom"), sash);
  });

  it("is the wall where no opening stands beside it", () => {
    assert.equal(cutterAt(takeaways, box(5, 20, 10, 25), "right"), "wall");
    assert.equal(cutterAt(takeaways, box(5, 12, 9, 15), "right"), "wall");
  });

  it("has a number of its own", () => {
    const keys = [null, "wall" as const, sash].map((cutter) => cutterKey(takeaways, cutter));
    assert.deepEqual(keys, [0, 1, 2]);
  });

  it("names the place of the cut", () => {
    const across = (low: "wall" | Takeaway | null, high: "wall" | Takeaway | null) =>
      placeName({ direction: "across", low, high }, lay!);
    const up = (low: "wall" | Takeaway | null, high: "wall" | Takeaway | null) =>
      placeName({ direction: "up", low, high }, lay!);
    assert.equal(across("wall", null), "at the left end");
    assert.equal(across(null, "wall"), "at the right end");
    assert.equal(up("wall", null), "along the bottom");
    assert.equal(up(null, "wall"), "along the top");
    assert.equal(across(sash, null), "right of window sash");
    assert.equal(across(null, sash), "left of window sash");
    assert.equal(up(sash, null), "over window sash");
    assert.equal(up(null, sash), "under window sash");
    assert.equal(across("wall", sash), "between the left end and window sash");
    assert.equal(up(sash, "wall"), "between window sash and the top");
    assert.equal(across(null, null), "in the field");
  });
});
