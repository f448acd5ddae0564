import assert from "node:assert/strict";
import type { Quantity } from "../../src/compare/index.js";
import { takeoff } from "../../src/takeoff/index.js";
import { comparisonOf, edited, told, WALL } from "./wall.js";

type Kind = Quantity["kind"];

function pieces(before: string, after: string, kind: Kind) {
  const found = comparisonOf(before, after).quantities.find((each) => each.kind === kind);
  assert.ok(found && "pieces" in found);
  return found;
}

function material(before: string, after: string, kind: Kind) {
  const found = comparisonOf(before, after).quantities.find((each) => each.kind === kind);
  return found && "amount" in found ? found : null;
}

const SOLD = edited(WALL, [
  "bed 1/8\n",
  `bed 1/8
mortar { bag 50 lb covers 4 sqft }
grout { density 1.6; bag 1 lb }
sealant { tube 1 floz }
`,
]);

describe("quantities", () => {
  it("count the tiles that are needed, where cuts share one as a setter would cut them", () => {
    // The ends are 1 15/16 in wide, so that both of a course, with the saw's kerf, are cut from one tile.
    const ends = edited(WALL, ["full tile from left", "tile centred on wall"]);
    const { needed } = takeoff(told(ends).solved).tiles[0]!;
    assert.equal(pieces(WALL, ends, "tile").pieces.after, needed);
    assert.ok(needed < told(ends).solved.walls[0]!.lays[0]!.pieces.count);
  });

  it("count lengths of trim to buy", () => {
    const framed = edited(WALL, ["  niche shelf {", "  niche shelf {\n    frame nose butt"]);
    const { bought } = takeoff(told(framed).solved).trims[0]!;
    assert.ok(bought >= 4);
    assert.deepEqual(pieces(WALL, framed, "trim").pieces, { before: 0, after: bought });
  });

  it("give boxes where the plan says what a box holds", () => {
    assert.deepEqual(pieces(WALL, edited(WALL, ["box 25", "box 20"]), "tile").boxes, {
      before: 3,
      after: 3,
    });
    assert.deepEqual(pieces(WALL, edited(WALL, ["  box 25\n", ""]), "tile").boxes, {
      before: 3,
      after: null,
    });
  });

  it("tell grout, sealant and mortar of all walls, in bags and tubes where the plan says how", () => {
    const wider = edited(SOLD, ["joint 1/8\n    across", "joint 3/16\n    across"]);
    const grout = material(SOLD, wider, "grout")!;
    assert.ok(grout.amount.after > grout.amount.before);
    assert.ok(grout.packs.after! >= grout.packs.before!);
    assert.equal(material(WALL, WALL, "grout")!.packs.before, null);
    const sealant = material(SOLD, wider, "sealant")!;
    assert.equal(sealant.pack, "tube");
    assert.equal(sealant.amount.before, sealant.amount.after);
    assert.equal(material(SOLD, wider, "mortar")!.of, "area");
  });

  it("tell the membrane where a wall stands over a tub or a pan alone", () => {
    assert.equal(material(WALL, WALL, "membrane"), null);
    const wet = edited(WALL, ["bottom counter", "bottom pan"]);
    // 41 3/8 x 22 7/8 in of bare wall.
    const inch = 25.4;
    const area = Math.ceil(41.375 * 22.875 * inch * inch);
    assert.equal(material(WALL, wet, "membrane")!.amount.after, area);
  });
});
