import assert from "node:assert/strict";
import { PIECE_KINDS, pieceGroups } from "../../../src/drawing/scene/pieces.js";
import { printSketch } from "../../support/print-sketch.js";
import { ANY, randomSketch } from "../../support/random-sketch.js";
import { planOf, solvedOf, solvedWallOf, wallText } from "../support/scene-of.js";

function groupsOf(inside: string) {
  const { solved } = solvedWallOf(planOf(wallText(inside)));
  return pieceGroups(solved, {});
}

describe("the pieces of a picture", () => {
  it("are grouped by kind, then by course", () => {
    const groups = groupsOf("");
    const order = groups.map(({ kind, course }) => PIECE_KINDS.indexOf(kind) * 1000 + course);
    assert.deepEqual(
      order,
      [...order].sort((a, b) => a - b),
    );
    assert.equal(new Set(order).size, order.length);
    const first = groups.find(({ kind, course }) => kind === "whole" && course === 1)!;
    assert.equal(first.boxes.length, 4 * 6);
    assert.deepEqual(first.boxes.slice(0, 4), [3.175, -79.375, 155.575, -3.175]);
  });

  it("tell slivers, notches, scribes and pieces with holes apart", () => {
    const kinds = (inside: string) => new Set(groupsOf(inside).map(({ kind }) => kind));
    assert.ok(kinds("  hole h at 9, 9 across 1").has("hole"));
    assert.ok(kinds("  bottom pan measured 0: 0, 40: 1 movement 1/8").has("scribe"));
    const niche = kinds("  niche n {\n    at 20, 15\n    size 5 x 5\n    movement 1/8\n  }");
    assert.ok(niche.has("notch"));
    // 1/2 in is left over at the right of course 1.
    const { solved } = solvedWallOf(planOf(wallText().replace("40 x 30", "37 1/2 x 30")));
    const sliver = pieceGroups(solved, {}).find(({ kind }) => kind === "sliver")!;
    assert.equal(sliver.course, 1);
    assert.equal(sliver.boxes[2]! - sliver.boxes[0]! < 25.4, true);
    assert.ok(
      !pieceGroups(solved, { sliver: { kind: "off" } }).some(({ kind }) => kind === "sliver"),
    );
  });

  it("are all there, each once, in two hundred random walls", () => {
    for (let seed = 1; seed <= 200; seed++) {
      for (const wall of solvedOf(printSketch(randomSketch(seed, ANY), "mm")).walls) {
        const drawn = pieceGroups(wall, {}).reduce(
          (sum, { boxes, shapes }) => sum + boxes.length / 4 + shapes.length,
          0,
        );
        const laid = wall.lays.reduce((sum, { pieces }) => sum + pieces.count, 0);
        assert.equal(drawn, laid, `seed ${seed}`);
      }
    }
  });
});
