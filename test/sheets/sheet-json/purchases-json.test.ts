import assert from "node:assert/strict";
import {
  materialsJson,
  tileJson,
  trimJson,
} from "../../../src/sheets/sheet-json/purchases-json.js";
import { exampleGround } from "../paper/sheet-bench.js";

describe("purchases as JSON", () => {
  const { solved, takeoff } = exampleGround("three-walls.tileplan");
  const read = (text: string) => JSON.parse(text) as Record<string, unknown>;

  it("tell a tile from what is set to what is bought", () => {
    const [tile] = takeoff.tiles;
    const json = read(tileJson(tile!));
    assert.deepEqual(
      [json.tile, json.whole, json.cutUp, json.needed, json.bought],
      ["pressed", tile!.whole, tile!.cut.length, tile!.needed, tile!.bought],
    );
    assert.deepEqual(json.boxes, tile!.boxes);
    assert.equal(json.cost, null);
  });

  it("tell areas that come to the faces of all tiles", () => {
    const [tile] = takeoff.tiles;
    const areas = read(tileJson(tile!)).areas as Record<string, number>;
    const sum = Object.values(areas).reduce((total, area) => total + area, 0);
    const face = (tile!.tile.face.across / 1e6) * (tile!.tile.face.up / 1e6);
    assert.ok(Math.abs(sum - tile!.needed * face) < 1e-3, `${sum} of ${tile!.needed * face}`);
  });

  it("tell trim by its cuts", () => {
    const json = read(trimJson(takeoff.trims[0]!));
    assert.equal(json.bought, takeoff.trims[0]!.bought);
    assert.equal((json.pieces as object[]).length, takeoff.trims[0]!.pieces.length);
  });

  it("tell materials by volume, and null for what the plan doesn't state", () => {
    const json = read(materialsJson(solved.plan, takeoff)) as Record<
      string,
      Record<string, unknown>
    >;
    // The stock list says how they are sold, and no price.
    assert.deepEqual(json.mortar!.bags, { count: 1, cost: null });
    assert.ok(Number(json.grout!.mass) > 0);
    assert.ok(Number(json.sealant!.volume) > 0);
    assert.ok(Number(json.membrane!.area) > 0);
    assert.equal(json.membrane!.nicheSides, 0);
  });
});
