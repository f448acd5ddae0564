import assert from "node:assert/strict";
import { softStretches } from "../../src/rules/index.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { wallText, type WallText } from "./wall-text.js";

const INCH = 25_400_000;

/** `0 to 30`: the stretches in inches; an end that is a soft joint has its way behind it. */
function stretches(way: "wide" | "high", parts: WallText): string[] {
  const { wall } = firstWall(solveClean(wallText({ size: "60 x 30", ...parts })));
  return softStretches(wall, way).map(({ from, to }) =>
    [from, to].map(({ at, joint }) => `${at / INCH}${joint ? " soft" : ""}`).join(" to "),
  );
}

const SECOND = "lay field {\n bond stack\n joint 1/8\n across full tile from left\n";

describe("how wide and high tile is between soft joints", () => {
  it("is all of it without any", () => {
    assert.deepEqual(stretches("wide", {}), ["0 to 60"]);
    assert.deepEqual(stretches("high", {}), ["0 to 30"]);
  });

  it("ends at a soft joint, whose width is no tile", () => {
    const lay = "movement joint at 30\nmovement joint over course 4";
    assert.deepEqual(stretches("wide", { lay }), ["0 to 30.5 soft", "30.625 soft to 60"]);
    assert.deepEqual(stretches("high", { lay }), ["0 to 12.375 soft", "12.5 soft to 30"]);
  });

  it("goes on over an opening that interrupts the joint", () => {
    const wall = "niche shelf {\n at 20, 6\n size 20 x 12\n movement 1/8\n}";
    const lay = "movement joint at 30";
    assert.deepEqual(stretches("wide", { wall, lay }), ["0 to 30.5 soft", "30.625 soft to 60"]);
  });

  it("goes on from lay to lay, unless the joint between them is soft", () => {
    const left = "covers left to 24";
    const wall = `${SECOND}}`;
    assert.deepEqual(stretches("wide", { lay: left, wall }), ["0 to 60"]);
    assert.deepEqual(stretches("wide", { lay: `${left}\nbetween movement 1/4`, wall }), [
      "0 to 24 soft",
      "24.25 soft to 60",
    ]);
  });

  it("is told for each height at which it differs", () => {
    const lay = "covers bottom to 12 3/8\nmovement joint at 30";
    assert.deepEqual(stretches("wide", { lay, wall: `${SECOND}}` }), [
      "0 to 30.5 soft",
      "30.625 soft to 60",
      "0 to 60",
    ]);
    // The joint between the lays has no tile in it, so that it parts nothing.
    const both = `${SECOND} movement joint at 30\n}`;
    assert.deepEqual(stretches("wide", { lay, wall: both }), [
      "0 to 30.5 soft",
      "30.625 soft to 60",
    ]);
  });
});
