import assert from "node:assert/strict";
import { cutsBlocks } from "../../../src/sheets/paper/cuts-block.js";
import { mitredText } from "../../rooms/mitred-text.js";
import { wallText } from "../setting-out/plans.js";
import { benchGround, groundFor, tableOf, wordsOf } from "./sheet-bench.js";

describe("the list of cuts", () => {
  // Whole at the left and the bottom; 2 5/8 at the right, 3 1/8 at the top.
  const ground = benchGround(wallText());
  const blocks = cutsBlocks(ground, ground.takeoff.walls[0]!);
  const { rows } = tableOf(blocks);

  it("has a row a batch: how it is set, how many, which edges stay, where they go", () => {
    assert.deepEqual(rows, [
      [
        "1",
        "rip",
        "fence at 3 1/8 in (79.4 mm): keep that height from the bottom factory edge",
        "9",
        "left, right and bottom",
        "B-06-01 to B-06-09",
      ],
      [
        "2",
        "crosscut",
        "fence at 2 5/8 in (66.7 mm): keep that width from the left factory edge",
        "5",
        "left, bottom and top",
        "B-01-10 to B-05-10, every course",
      ],
      [
        "3",
        "rip and crosscut",
        "fence at 2 5/8 in (66.7 mm): keep that width from the left factory edge; " +
          "fence at 3 1/8 in (79.4 mm): keep that height from the bottom factory edge",
        "1",
        "left and bottom",
        "B-06-10",
      ],
    ]);
  });

  it("tells how many there are, and what a label means", () => {
    assert.match(
      wordsOf(blocks),
      /^15 pieces to cut\. A label is wall, course .* such as B-06-01\./,
    );
  });

  it("tells how many edges are mitred, of which hand, how long together, and that they come last", () => {
    const mitred = groundFor(mitredText());
    const [back, pier] = mitred.takeoff.walls;
    const words = wordsOf(cutsBlocks(mitred, back!));
    assert.match(
      words,
      /Mitred, seen from the front: 8 right edges, 23 9\/16 in in all\. Cut square first/,
    );
    assert.match(wordsOf(cutsBlocks(mitred, pier!)), /8 left edges, 23 9\/16 in in all\./);
    assert.doesNotMatch(wordsOf(blocks), /[Mm]itre/);
    const last = tableOf(cutsBlocks(mitred, back!)).rows.at(-1)!;
    assert.deepEqual(
      [last[1], last[3], last[4], last[5]],
      ["mitre", "7", "left, bottom and top", "B-01-10 to B-07-10, every course"],
    );
    assert.match(last[2]!, /^mitre along the right, 3 in \(76\.2 mm\)/);
  });

  it("tells what the saw can't do", () => {
    const [wall] = ground.takeoff.walls;
    const [batch] = wall!.batches;
    const beyond = { ...wall!, batches: [{ ...batch!, beyondSaw: ["a rip of 4 in"] }] };
    assert.match(
      tableOf(cutsBlocks(ground, beyond)).rows[0]![2]!,
      /; Not on this saw: a rip of 4 in$/,
    );
  });

  it("is nothing where nothing is cut", () => {
    assert.deepEqual(
      cutsBlocks(ground, { ...ground.takeoff.walls[0]!, batches: [], pieces: [] }),
      [],
    );
  });
});
