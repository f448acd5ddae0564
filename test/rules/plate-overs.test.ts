import assert from "node:assert/strict";
import { plateOvers } from "../../src/rules/plate-overs.js";
import { NM_PER } from "../../src/measure/index.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { wallText } from "./wall-text.js";

const IN = NM_PER.inch;

/** The tile fills a wall of 24 3/8 x 12 3/8 in. */
const oversOf = (hole: string, more = "") => {
  const { wall } = firstWall(solveClean(wallText({ wall: `hole v at ${hole}\n${more}` })));
  return plateOvers(wall, wall.wall.holes[0]!);
};

describe("what a plate runs over", () => {
  it("is nothing of a plate on tile, and of a hole without one", () => {
    assert.deepEqual(oversOf("12, 6 across 2 plate 6"), []);
    assert.deepEqual(oversOf("1, 6 across 2"), []);
  });

  it("is each side that it runs past, with the way back", () => {
    const overs = oversOf("2, 10 3/8 across 2 plate 6");
    assert.deepEqual(
      overs.map((over) => [over.kind === "side" && over.side, over.by, over.mend]),
      [
        ["left", IN, { x: IN, y: 0 }],
        ["top", IN, { x: 0, y: -IN }],
      ],
    );
    assert.deepEqual(oversOf("3, 6 across 2 plate 6"), []);
    assert.equal(oversOf("3 - nm, 6 across 2 plate 6")[0]!.by, 1);
  });

  it("is an opening with its joint, the shorter way", () => {
    const niche = "niche n {\n at 12, 4\n size 6 x 4\n movement 1/8\n}";
    const [over] = oversOf("9, 6 across 2 plate 6", niche);
    assert.ok(over?.kind === "opening");
    // From 6 to 12 in, against 12 - 1/8 in.
    assert.deepEqual([over.by, over.mend], [IN / 8, { x: -IN / 8, y: 0 }]);
  });

  it("goes round a corner where the plate is round", () => {
    const niche = "niche n {\n at 12, 6\n size 6 x 4\n}";
    // The corner is 3-4-5 off the middle: 5 in exactly, but 6 in beside the box.
    const at = "9, 2 across 2";
    assert.deepEqual(
      oversOf(`${at} plate 10`, niche).filter(({ kind }) => kind === "opening"),
      [],
    );
    assert.equal(
      oversOf(`${at} plate 10 + nm`, niche).filter(({ kind }) => kind === "opening").length,
      1,
    );
    assert.equal(
      oversOf(`${at} plate 10 x 10`, niche).filter(({ kind }) => kind === "opening").length,
      1,
    );
  });
});
