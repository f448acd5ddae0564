import assert from "node:assert/strict";
import { handOffBlocks } from "../../../src/sheets/paper/hand-offs-block.js";
import { wallText } from "../setting-out/plans.js";
import { benchGround, tableOf } from "./sheet-bench.js";

describe("offcuts that are handed on", () => {
  // 40 less two joints of 1/8, nine tiles and their joints centred: 1 1/4 is left at each end of a 4 in tile.
  const ground = benchGround(wallText({ size: "40 x 24 7/8", across: "tile centred on wall" }));
  const [cuts] = ground.takeoff.walls;

  it("tell each tile that gives more than one piece, and what is left over of it", () => {
    const { rows } = tableOf(handOffBlocks(ground, cuts!));
    const shared = ground.takeoff.tiles
      .flatMap(({ cut }) => cut)
      .filter(({ pieces }) => pieces.length > 1);
    assert.ok(shared.length > 0);
    const told = rows.map(([from]) => from).join("; ");
    for (const { pieces } of shared) {
      for (const { label } of pieces) assert.ok(told.includes(label), label);
    }
    assert.equal(told.split(/ \+ |; /).length, shared.flatMap(({ pieces }) => pieces).length);
  });

  it("say which pieces are turned", () => {
    const [tile] = ground.takeoff.tiles;
    const [one] = tile!.cut.filter(({ pieces }) => pieces.length > 1);
    const turned = {
      ...one!,
      pieces: one!.pieces.map((piece, i) => ({ ...piece, turns: i === 0 ? 2 : 1 }) as const),
    };
    const takeoff = { ...ground.takeoff, tiles: [{ ...tile!, cut: [turned] }] };
    const [[from]] = tableOf(handOffBlocks({ ...ground, takeoff }, cuts!)).rows as [[string]];
    assert.match(from, /^\S+ \(turned end for end\) \+ \S+ \(turned a quarter\)/);
  });

  it("are none where every piece has a tile of its own", () => {
    const takeoff = { ...ground.takeoff, tiles: [] };
    assert.deepEqual(handOffBlocks({ ...ground, takeoff }, cuts!), []);
  });
});
