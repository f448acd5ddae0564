import assert from "node:assert/strict";
import { mitredEdges, mitresOf, worked } from "../../../src/takeoff/cuts/mitres.js";
import { NM_PER } from "../../../src/measure/index.js";
import { pieceBounds } from "../../../src/solver/index.js";
import { mitredText } from "../../rooms/mitred-text.js";
import { outsideText } from "../../rooms/outside-text.js";
import { checkTiles } from "../../support/check-tiles.js";
import { takeText } from "../../support/takeoff-text.js";

const IN = NM_PER.inch;

// By hand: 24 in of 3 in tile and joints of 1/16 in are seven courses and 24 - 7 x 3 1/16 = 2 9/16 in of an eighth. The
// back wall's tile ends at 60 + 7/16 - 1/32 = 60 13/32 in, from where whole tiles go left: nine, and 60 13/32 - 9 x 6 1/16 =
// 5 27/32 in; the pier's begins with a whole tile. So each course of each wall has one mitred edge.
describe("mitred edges", () => {
  const text = mitredText();
  const { solved, taken } = takeText(text);
  const [back, pier] = taken.walls;
  const laid = solved.walls[0]!.lays[0]!;

  it("are one a course, 7 x 3 + 2 9/16 = 23 9/16 in on each wall", () => {
    for (const wall of solved.walls) {
      assert.deepEqual(mitredEdges(wall), { count: 8, length: (23 + 9 / 16) * IN });
    }
  });

  it("are at the right of the wall at the corner's left, and at the left of the other", () => {
    const hands = [back!, pier!].map(({ pieces }) =>
      pieces.flatMap(({ label, cut }) => cut.mitres.map(({ side }) => `${label} ${side}`)),
    );
    assert.deepEqual(hands[0], [
      ...[1, 2, 3, 4, 5, 6, 7, 8].map((n) => `${back!.mark}-0${n}-10 right`),
    ]);
    assert.deepEqual(hands[1], [
      ...[1, 2, 3, 4, 5, 6, 7, 8].map((n) => `${pier!.mark}-0${n}-01 left`),
    ]);
  });

  it("make a piece of the saw's of a tile whose face is whole, and leave that edge no factory edge", () => {
    const whole = back!.pieces.find(({ label }) => label.endsWith("-02-10"))!;
    assert.deepEqual(whole.cut, {
      kind: "mitre",
      box: { left: 0, bottom: 0, right: 6 * IN, top: 3 * IN },
      fences: [],
      tapers: [],
      notches: [],
      holes: [],
      mitres: [{ side: "right", length: 3 * IN }],
    });
    assert.deepEqual(whole.factory, ["left", "bottom", "top"]);
    const isWorked = worked(solved.walls[0]!, laid);
    const column = (n: number) => laid.pieces.courseStart[1]! + n - 1;
    assert.deepEqual([1, 2, 9, 10].map(column).map(isWorked), [true, false, false, true]);
  });

  it("come last in the order of work, after the cuts that make the face", () => {
    assert.deepEqual(
      back!.batches.map(({ cut, labels }) => [cut.kind, cut.fences.length, labels.length]),
      [
        ["rip", 1, 8],
        ["crosscut", 1, 7],
        ["corner", 2, 1],
        ["mitre", 1, 1],
        ["mitre", 0, 7],
      ],
    );
  });

  it("are passes of the saw, and take no tile more than the same walls without them", () => {
    const { passes, mitredEdges: count, mitreLength, mitres } = taken.saw;
    assert.deepEqual([count, mitreLength, mitres], [16, (47 + 1 / 8) * IN, 0]);
    const fences = taken.walls.flatMap(({ pieces }) => pieces).flatMap(({ cut }) => cut.fences);
    assert.equal(passes, fences.length + 16);
    const [tile] = taken.tiles;
    const worked = taken.walls.flatMap(({ pieces }) => pieces).length;
    const set = solved.walls.reduce((sum, { lays }) => sum + lays[0]!.pieces.count, 0);
    assert.equal(tile!.whole, set - worked);
    checkTiles(solved, taken, text);
  });

  it("are none at a corner that laps, nor in the field", () => {
    const lapped = takeText(outsideText()).solved;
    assert.deepEqual(lapped.walls.map(mitredEdges), [
      { count: 0, length: 0 },
      { count: 0, length: 0 },
    ]);
    const inField = Array.from({ length: laid.pieces.count }, (_, i) => i).filter(
      (i) => pieceBounds(laid.pieces, i).right < 60 * IN,
    );
    assert.deepEqual(
      inField.flatMap((i) => mitresOf(solved.walls[0]!, laid, i)),
      [],
    );
  });

  it("are as long as the slope where the corner is out of plumb", () => {
    // 3/4 in in 24 in: over a course of 3 in the edge is 3 in up and 3/32 in across.
    const leaning = text.replace(
      "right outside pier mitre",
      "right outside pier mitre measured 0: 0, 24: 3/4",
    );
    const { walls } = takeText(leaning).solved;
    const own = walls[0]!.lays[0]!;
    const last = own.pieces.courseStart[1]! - 1;
    assert.deepEqual(mitresOf(walls[0]!, own, last), [
      { side: "right", length: Math.round(Math.hypot(3 * IN, (3 / 32) * IN)) },
    ]);
  });

  it("are a lay's own where several stand at the corner, and none of a panel's in the field", () => {
    const two = text
      .replace(
        "  lay field {",
        "  lay thick {\n    covers bottom to 9\n    bond stack\n    joint 1/16\n  }\n  lay field {",
      )
      .replace("    across full tile from right\n    up full course from bottom\n", "");
    const [wall] = takeText(two).solved.walls;
    const counts = wall!.lays.map(
      (lay) =>
        Array.from({ length: lay.pieces.count }, (_, i) => mitresOf(wall!, lay, i)).flat().length,
    );
    assert.deepEqual(
      counts,
      wall!.lays.map(({ courses }) => courses.length),
    );
    assert.equal(counts.length, 2);
  });
});
