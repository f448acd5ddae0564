import assert from "node:assert/strict";
import { Cutting } from "../../../src/takeoff/tiles/cutting.js";
import type { Demand } from "../../../src/takeoff/tiles/demand.js";
import { EDGE } from "../../../src/takeoff/tiles/edges.js";
import { sortOut, type Wanted } from "../../../src/takeoff/tiles/kinds.js";
import { packRests } from "../../../src/takeoff/tiles/pack-rests.js";

const FACE = { across: 100, up: 50, directional: false, kerf: 2 };

function pieces(many: number, width: number, height: number, needs = 0): readonly Wanted[] {
  const demands = Array.from({ length: many }, (_, n): Demand => ({
    label: `${width}-${n}`,
    course: 1,
    width,
    height,
    needs,
  }));
  return sortOut(FACE, demands).pieces;
}

describe("pieces packed into what is left", () => {
  it("come from a rest before a new tile is begun, from the smallest that does", () => {
    const cutting = Cutting.of(FACE);
    const [small, large] = [cutting.openTile(), cutting.openTile()];
    cutting.shelf.lay({ ...large, own: 0 });
    cutting.shelf.lay({ ...small, own: 0, box: { left: 0, bottom: 0, right: 30, top: 20 } });
    const packed = packRests(cutting, pieces(1, 28, 18), () => 2);
    assert.deepEqual([packed.tiles, packed.placed[0]!.tile], [2, small.tile]);
  });

  it("come from a rest with the edges that they need alone", () => {
    const cutting = Cutting.of(FACE);
    cutting.shelf.lay({ ...cutting.openTile(), own: EDGE.top });
    assert.equal(packRests(cutting, pieces(1, 28, 18, EDGE.left | EDGE.top), () => 1).tiles, 2);
  });

  it("fill tiles as full as they go", () => {
    assert.equal(packRests(Cutting.of(FACE), pieces(8, 49, 24), () => 2).tiles, 2);
    const upright = EDGE.bottom | EDGE.top;
    const strips = [...pieces(3, 55, 50, upright), ...pieces(3, 43, 50, upright)];
    assert.equal(packRests(Cutting.of(FACE), strips, () => 3).tiles, 3);
  });

  it("ask for the bound only where a tile had to be begun", () => {
    const cutting = Cutting.of(FACE);
    cutting.shelf.lay(cutting.openTile());
    const unasked = () => assert.fail("asked");
    assert.equal(packRests(cutting, pieces(1, 28, 18), unasked).tiles, 1);
    assert.throws(() => packRests(Cutting.of(FACE), pieces(1, 28, 18), unasked), /asked/);
  });

  it("leave the tiles that they were given as they are", () => {
    const cutting = Cutting.of(FACE);
    packRests(cutting, pieces(3, 49, 24), () => 1);
    assert.deepEqual([cutting.tiles, cutting.placed.length], [0, 0]);
  });

  it("are packed in another order when the first takes too many tiles", () => {
    const mixed = [...pieces(2, 70, 24), ...pieces(2, 28, 24), ...pieces(2, 49, 24)];
    assert.equal(packRests(Cutting.of(FACE), mixed, () => 2).tiles, 2);
  });
});
