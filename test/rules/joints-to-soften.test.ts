import assert from "node:assert/strict";
import { jointsToSoften } from "../../src/rules/index.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { wallText, type WallText } from "./wall-text.js";

const INCH = 25_400_000;

/** `at 30 9/16` or `over 3`, in inches: what is to be soft on a wall of 6 x 3 in tile with joints of 1/8 in. */
function softened(way: "wide" | "high", apart: string, parts: WallText = {}): string[] | null {
  const text = wallText({ size: "60 x 30", plan: `rules {\n apart ${apart}\n}`, ...parts });
  const answer = solveClean(text);
  const { wall } = firstWall(answer);
  return (
    jointsToSoften(wall, answer.solved, way)?.map(({ joint }) =>
      joint.kind === "head" ? `at ${joint.x / INCH}` : `over ${joint.over}`,
    ) ?? null
  );
}

describe("the joints that are to be soft", () => {
  it("are none where nothing is too far", () => {
    assert.equal(softened("wide", "60"), null);
    assert.equal(softened("high", "30"), null);
  });

  it("is the one nearest to the middle", () => {
    // Joints begin at 6, 12 1/8, 18 1/4, 24 3/8, 30 1/2 ... and are 1/8 in wide.
    assert.deepEqual(softened("wide", "59"), ["at 30.5625"]);
    assert.deepEqual(softened("high", "29"), ["over 5"]);
  });

  it("are as many as it takes, more where joints aren't where an even share would be", () => {
    // 60 halves to 30.5 and 29.375: 30.5 do, 30 don't, and two share it in thirds.
    assert.deepEqual(softened("wide", "30 1/2"), ["at 30.5625"]);
    assert.deepEqual(softened("wide", "30"), ["at 18.3125", "at 42.8125"]);
  });

  it("can't be where tile is wider than that from joint to joint", () => {
    assert.equal(softened("wide", "6 - nm"), null);
    assert.equal(softened("high", "3 - nm"), null);
  });

  it("can't be in a bond that shifts its head joints, but over its courses", () => {
    assert.equal(softened("wide", "40", { bond: "running 1/2" }), null);
    assert.deepEqual(softened("high", "29", { bond: "running 1/2" }), ["over 5"]);
  });
});
