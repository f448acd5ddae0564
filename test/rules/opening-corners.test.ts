import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { cornerGaps } from "../../src/rules/opening-corners.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { wallText } from "./wall-text.js";

const gaps = (at: string, where: "under" | "over") => {
  const wall = `window sash {\n at ${at}\n size 8 x 6\n movement 1/8\n}`;
  const text = wallText({ bond: "running 1/2", size: "42 3/4 x 24 7/8", wall });
  const { wall: solved, laid } = firstWall(solveClean(text));
  return cornerGaps(laid, solved.region.takeaways[0]!, where).map(
    ({ twiceApart }) => twiceApart / 2 / NM_PER.inch,
  );
};

describe("the corners of an opening", () => {
  it("measure from the middle of the joint along its side to the nearest head joint", () => {
    // Course 2's head joints stand at 9 1/8 and 15 1/4 in, the window's joints at 9 15/16 and 18 1/16.
    assert.deepEqual(gaps("10, 6 1/4", "under"), [0.8125, 2.8125]);
  });

  it("count only where the sill or head lies on a bed joint", () => {
    assert.deepEqual(gaps("10, 6 1/2", "under"), []);
    assert.deepEqual(gaps("10, 6 1/4", "over").length, 2);
    assert.deepEqual(gaps("10, 7", "over"), []);
  });
});
