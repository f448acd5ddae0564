import assert from "node:assert/strict";
import { EarlierLayout } from "../../src/solver/earlier-layout.js";
import type { SolvedWall } from "../../src/solver/index.js";
import { solveClean } from "../support/solve-text.js";

function wallOf(niche: string, across = "full tile from left"): SolvedWall {
  const text = `units mm
tile t { face 99 x 99
 thickness 8 }
trim nose { face 150 x 20
 thickness 8 }
wall w {
  size 1000 x 1000
  right free trim nose
  niche shelf { at ${niche}
   size 300 x 200
   frame nose mitre }
  lay t { bond running 1/2
   joint 1
   across ${across}
   up full course from bottom }
}
`;
  return solveClean(text).solved.walls[0]!;
}

const WALL = wallOf("300, 300");
const earlier = new EarlierLayout([WALL]);

describe("the earlier layout", () => {
  it("has the pieces of the same region on the same lattice", () => {
    const { region, lattice, pieces, courses } = WALL.lays[0]!;
    assert.deepEqual(earlier.piecesOf(region, lattice), { lattice, pieces, courses });
    assert.equal(earlier.piecesOf(structuredClone(region), { ...lattice })?.pieces, pieces);
  });

  it("takes any course's bottom for that of the lattice", () => {
    const { region, lattice, pieces } = WALL.lays[0]!;
    const from = (y: number) => earlier.piecesOf(region, { ...lattice, y: lattice.y + y });
    assert.equal(from(-300_000_000)?.pieces, pieces);
    assert.equal(from(1), null);
  });

  it("has none of another lattice or region", () => {
    const { region, lattice } = WALL.lays[0]!;
    const others = [
      { x: lattice.x + 1 },
      { joint: lattice.joint + 1 },
      { bed: lattice.joint },
      { face: { ...lattice.face, across: lattice.face.across + 1 } },
      { p: 0, q: 1 },
      { after: 1 },
    ];
    for (const other of others) {
      assert.equal(earlier.piecesOf(region, { ...lattice, ...other }), null, JSON.stringify(other));
    }
    assert.equal(earlier.piecesOf(wallOf("301, 300").lays[0]!.region, lattice), null);
  });

  it("has the trim of a wall that says the same and has the same tile, along its own parts", () => {
    const again = wallOf("300, 300");
    const lays = again.lays.map((lay, i) => ({ ...lay, pieces: WALL.lays[i]!.pieces }));
    const trims = earlier.trimsOf({ ...again, lays })!;
    assert.deepEqual(trims, again.trims);
    trims.forEach(({ along, pieces }, i) => {
      const own = "opening" in along ? again.wall.openings[0] : again.wall.edges.right;
      assert.equal(Object.values(along)[0], own);
      assert.equal(pieces, WALL.trims[i]!.pieces);
    });
  });

  it("has no trim of a wall that was laid anew, is new or says anything else", () => {
    const again = wallOf("300, 300");
    assert.equal(earlier.trimsOf(again), null);
    const said = { ...WALL.wall, title: "Other" };
    assert.equal(earlier.trimsOf({ ...WALL, wall: said }), null);
    assert.equal(earlier.trimsOf({ ...WALL, wall: { ...WALL.wall, name: "v" } }), null);
    assert.equal(earlier.trimsOf({ ...WALL, lays: [] }), null);
    assert.equal(EarlierLayout.NONE.trimsOf(WALL), null);
  });
});
