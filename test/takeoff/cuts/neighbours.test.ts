import assert from "node:assert/strict";
import { meetsTile } from "../../../src/takeoff/cuts/neighbours.js";
import { stretchAlong } from "../../../src/takeoff/cuts/stretch.js";
import type { Side } from "../../../src/model/index.js";
import { pieceId } from "../../../src/solver/index.js";
import { type CutWall, cutWall } from "../../support/cut-wall.js";

function meets({ laid }: CutWall, place: string, side: Side): boolean {
  const { pieces } = laid;
  for (let i = 0; i < pieces.count; i++) {
    if (pieceId(laid, i) !== `back/${place}`) continue;
    return meetsTile(laid, i, side, stretchAlong(pieces, i, side)!);
  }
  throw new Error(`no piece ${place}`);
}

describe("whether a piece meets another tile across a joint", () => {
  const bond = cutWall({ size: "304 x 102", bond: "running 1/2" });

  it("is so beside it in its course, and not at the wall's ends", () => {
    assert.equal(meets(bond, "1/2", "left"), true);
    assert.equal(meets(bond, "1/2", "right"), true);
    assert.equal(meets(bond, "1/1", "left"), false);
    assert.equal(meets(bond, "1/3", "right"), false);
  });

  it("is so over and under it, though the bond shifts the next course", () => {
    assert.equal(meets(bond, "1/1", "top"), true);
    assert.equal(meets(bond, "2/1", "bottom"), true);
    assert.equal(meets(bond, "1/1", "bottom"), false);
    assert.equal(meets(bond, "2/4", "top"), false);
  });

  it("is not so across an opening that takes the joint and more", () => {
    const opened = cutWall({
      size: "304 x 154",
      wall: ["window sash {\nat 100, 50\nsize 104 x 54\nmovement 0\n}"],
    });
    assert.equal(meets(opened, "2/1", "right"), false);
    assert.equal(meets(opened, "2/3", "left"), false);
    assert.equal(meets(opened, "1/2", "top"), false);
    assert.equal(meets(opened, "3/2", "bottom"), false);
    assert.equal(meets(opened, "2/1", "top"), true);
  });

  it("is not so where the tile beside is cut back by an opening", () => {
    const opened = cutWall({
      size: "304 x 50",
      wall: ["window sash {\nat 100, 0\nsize 60 x 50\nmovement 0\n}"],
    });
    assert.equal(meets(opened, "1/1", "right"), false);
    assert.equal(meets(opened, "1/2", "right"), true);
  });
});
