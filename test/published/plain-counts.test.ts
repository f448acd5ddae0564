import assert from "node:assert/strict";
import type { Takeoff, TileTakeoff } from "../../src/takeoff/index.js";
import { freeWall } from "../support/free-wall.js";
import { takeText } from "../support/takeoff-text.js";

/** A wall of whole inches that is tiled without joints from its lower left corner. */
function wall(face: string, size: string, name = "back", stock = ""): string {
  return freeWall({
    face,
    size,
    joint: "0",
    across: "full tile from left",
    up: "full course from bottom",
  })
    .replace("wall back", `wall ${name}`)
    .replace("tile field {\n", `tile field {\n${stock}`);
}

/** Further walls of a plan: their blocks alone. */
function alone(text: string): string {
  return text.slice(text.indexOf("wall "));
}

function pieces({ walls }: Takeoff, { whole }: TileTakeoff): number {
  return whole + walls.reduce((sum, { pieces: cut }) => sum + cut.length, 0);
}

// Published: 184 in at 12 in are 15 whole and 4 in, so 16 a row; 12 rows take 192, and with 10 % more,
// rounded up, 212 (ehow.co.uk/how_7732121, no joints). It takes a new tile for every cut.
describe("twelve rows of 12 in tile on 184 in (ehow.co.uk/how_7732121)", () => {
  const { taken } = takeText(wall("12 x 12", "184 x 144", "back", "breakage 10%\n"));
  const [tile] = taken.tiles;

  it("are 192 pieces, 12 of them cut to 4 in", () => {
    assert.equal(pieces(taken, tile!), 192);
    assert.deepEqual([tile!.whole, taken.walls[0]!.pieces.length], [180, 12]);
  });

  it("take six tiles less when two cuts come from one", () => {
    assert.deepEqual([tile!.needed, tile!.cutBound], [186, 6]);
  });

  it("take 212 with 10 % more, where every cut takes a tile", () => {
    // Tiles of 24 in leave too little beside a cut of 12-1/2 for another one.
    const alike = takeText(wall("24 x 12", "372.5 x 144", "back", "breakage 10%\n")).taken
      .tiles[0]!;
    assert.deepEqual([alike.whole, alike.needed], [180, 192]);
    assert.equal(alike.bought, 212);
  });
});

// Published: 144 x 18 in with a 2 in border takes 144 tiles of 4 x 4 in (homesteady.com/how-6047182,
// no joints).
describe("a field of 144 x 16 in (homesteady.com/how-6047182)", () => {
  it("takes 144 tiles of 4 x 4 in, none of them cut", () => {
    const { tiles } = takeText(wall("4 x 4", "144 x 16")).taken;
    assert.deepEqual([tiles[0]!.needed, tiles[0]!.cut], [144, []]);
  });
});

// Published: three walls 72 in high, 30, 30 and 60 in wide, and 10 % more: 66 square feet, 528 pieces
// of 3 x 6 in (homesteady.com/how-12042196, no joints).
describe("three walls of a tub (homesteady.com/how-12042196)", () => {
  const { taken } = takeText(
    wall("6 x 3", "60 x 72", "back", "breakage 10%\n") +
      alone(wall("6 x 3", "30 x 72", "end")) +
      alone(wall("6 x 3", "30 x 72", "head")),
  );

  it("take 528 pieces of 3 x 6 in, 10 % of 480 with them", () => {
    const [tile] = taken.tiles;
    assert.deepEqual([tile!.needed, tile!.breakage, tile!.bought], [480, 48, 528]);
  });

  it("take 48 pieces of 3 in bullnose up both ends of 72 in", () => {
    const ends = freeWall({
      face: "6 x 3",
      size: "120 x 72",
      joint: "0",
      wall: ["left free trim nose", "right free trim nose"],
    });
    const nose = "trim nose {\n  face 3 x 2\n  thickness 0.25in\n}\n";
    const [trim] = takeText(ends + nose).taken.trims;
    assert.deepEqual([trim!.bought, trim!.length], [48, 2 * 72 * 25_400_000]);
    assert.ok(trim!.pieces.every(({ whole }) => whole));
  });

  it("are 60 square feet", () => {
    const foot = 12n * 25_400_000n;
    assert.equal(taken.tiles[0]!.doubleArea.set / (2n * foot * foot), 60n);
  });
});

// Published: 100 square feet of a pinwheel of 12 and 6 in tile are 80 and 20 %, 80 pieces of each
// (spotidoc.com/doc/88499; hunker.com/12001563, no joints). The language has no pinwheel: its shares
// are laid as two walls.
describe("80 and 20 square feet (spotidoc.com/doc/88499)", () => {
  it("are 80 pieces of 12 in and 80 of 6 in", () => {
    assert.equal((12 * 12) / (12 * 12 + 6 * 6), 0.8);
    const large = takeText(wall("12 x 12", "120 x 96")).taken.tiles[0]!;
    const small = takeText(wall("6 x 6", "60 x 48")).taken.tiles[0]!;
    assert.deepEqual([large.needed, small.needed], [80, 80]);
  });
});
