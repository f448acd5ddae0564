import assert from "node:assert/strict";
import { cutTiles } from "../../../src/takeoff/tiles/cut-tiles.js";
import { EDGE } from "../../../src/takeoff/tiles/edges.js";
import { fewestTiles, randomDemands } from "../../support/fewest-tiles.js";
import { randomFrom } from "../../support/random.js";

const CASES = 400;

describe("tiles cut into pieces", () => {
  it(`are no fewer than can be, nor are they under the bound, in ${CASES} cases against every way`, () => {
    const random = randomFrom(4);
    let best = 0;
    let proven = 0;
    for (let n = 0; n < CASES; n++) {
      const { face, demands } = randomDemands(random);
      const { count, tiles, bound } = cutTiles(face, demands);
      const fewest = fewestTiles(face, demands);
      const told = JSON.stringify({ face, demands });
      assert.ok(bound <= fewest, `at least ${bound}, but ${fewest} do: ${told}`);
      assert.ok(tiles.length >= fewest, `${tiles.length}, where ${fewest} are needed: ${told}`);
      assert.ok(tiles.length <= demands.length && tiles.length === count, told);
      if (tiles.length === fewest) best++;
      if (bound === fewest) proven++;
    }
    assert.ok(best > 0.95 * CASES, `${best} are the best there is`);
    assert.ok(proven > 0.8 * CASES, `${proven} bounds are met`);
  });

  it("give four corners, one at each of a tile's own", () => {
    const face = { across: 100, up: 50, directional: true, kerf: 2 };
    const corners = [
      EDGE.left | EDGE.bottom,
      EDGE.right | EDGE.bottom,
      EDGE.left | EDGE.top,
      6,
    ].map((needs, n) => ({ label: `c${n}`, course: 1, width: 49, height: 24, needs }));
    const { tiles, bound } = cutTiles(face, corners);
    assert.deepEqual([tiles.length, bound], [1, 1]);
    assert.deepEqual(tiles[0]!.offcuts, []);
  });

  it("are in the order of their first pieces", () => {
    const face = { across: 100, up: 50, directional: false, kerf: 2 };
    const demands = [70, 20, 60, 30].map((width, n) => ({
      label: `e${n}`,
      course: n,
      width,
      height: 50,
      needs: EDGE.left | EDGE.bottom | EDGE.top,
    }));
    const { tiles } = cutTiles(face, demands);
    assert.deepEqual(
      tiles.map(({ pieces }) => pieces.map(({ label }) => label)),
      [
        ["e0", "e1"],
        ["e2", "e3"],
      ],
    );
  });

  it("are none for no piece", () => {
    const face = { across: 100, up: 50, directional: false, kerf: 2 };
    assert.deepEqual(cutTiles(face, []), {
      count: 0,
      tiles: [],
      bound: 0,
      doubleKerf: 0n,
    });
  });
});
