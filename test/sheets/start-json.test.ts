import assert from "node:assert/strict";
import { acrossJson, upJson } from "../../src/sheets/start-json.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { WALL } from "./wall.js";

// The wall is 40 in (1016 mm) wide; the tile 4 in (101.6 mm), the joints 1/8 in (3.175 mm).
const { wall, laid } = firstWall(solveClean(WALL));
const sash = wall.wall.openings[0]!;

describe("a start as JSON", () => {
  it("tells across by the middle of the tile or joint, or the edge it is flush with", () => {
    const middle = { mode: "tile", at: 508 };
    assert.deepEqual(acrossJson(wall, laid, { kind: "tile", centre: { on: "wall" } }), middle);
    const onSash = { kind: "joint", centre: { on: "opening", opening: sash } } as const;
    assert.deepEqual(acrossJson(wall, laid, onSash), { mode: "joint", at: 508 });
    const left = acrossJson(wall, laid, { kind: "full-tile", from: "left" });
    assert.deepEqual(left, { mode: "left", at: 3.175 });
    const right = acrossJson(wall, laid, { kind: "full-tile", from: "right" });
    assert.deepEqual(right, { mode: "right", at: 1012.825 });
  });

  it("tells the wall that it goes on from, and how", () => {
    const x = 25_400_000;
    const carried = { wall: "side", corner: "left", x } as const;
    const wrapped = acrossJson(wall, laid, { kind: "wrapped", joint: "added", ...carried });
    // The inner edge of the tile: its left edge and its face.
    assert.deepEqual(wrapped, { mode: "wrapped", at: 127, from: "side", joint: "added" });
    const mirrored = acrossJson(wall, laid, { kind: "mirrored", ...carried });
    assert.deepEqual(mirrored, { mode: "mirrored", at: 127, from: "side" });
    const right = acrossJson(wall, laid, { kind: "mirrored", ...carried, corner: "right" });
    assert.equal(right.at, 25.4);
  });

  it("tells the edge that a lay has of its wall", () => {
    const beside = "covers left to 12\n bond stack\n joint 1/8\n up full course from bottom";
    const more = `lay field {\n ${beside}\n across full tile from right\n }\n}`;
    const text = WALL.replace(/\}\s*$/, more);
    const solved = solveClean(text).solved.walls[1]!;
    const low = solved.lays.find(({ lay }) => lay.name === "field-2")!;
    assert.deepEqual(acrossJson(solved, low, low.across), { mode: "right", at: 304.8 });
  });

  it("tells up by the bottom of the course, or the middle of the joint", () => {
    const bottom = upJson(wall, laid, { kind: "full-course", from: "bottom" });
    assert.deepEqual(bottom, { mode: "course", at: 3.175 });
    // 24 in less the soft joint less the tile.
    const top = upJson(wall, laid, { kind: "full-course", from: "top" });
    assert.deepEqual(top, { mode: "course", at: 504.825 });
    // The frame's outer top is 17 in; then one laid joint.
    const over = upJson(wall, laid, { kind: "at-opening", relation: "over", opening: sash });
    assert.deepEqual(over, { mode: "course", at: 434.975 });
    assert.deepEqual(upJson(wall, laid, { kind: "joint", y: 1_500_000 }), {
      mode: "joint",
      at: 1.5,
    });
  });
});
