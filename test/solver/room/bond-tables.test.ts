import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { BondTables } from "../../../src/solver/room/bond-tables.js";
import { WallAt } from "../../../src/solver/room/wall-at.js";
import { wantingOf } from "../../../src/solver/room/wanting.js";
import { bondedRoom, type BondedRoom } from "./bonded-room.js";

const bond = { a: 0, b: 1, end: "right", place: 1, isSayable: true } as const;

function tables(parts: BondedRoom): { tables: BondTables; walls: readonly WallAt[] } {
  const { plan } = bondedRoom(parts);
  const wanting = wantingOf(plan, plan.wishes);
  const walls = plan.walls.map((wall) => {
    const [lay] = wall.lays;
    return new WallAt(wanting, wall, lay!, lay!.joint.min, { cells: 0 }, true, 2);
  });
  const heights = walls.map((wall) => wall.heights[0]!);
  return { tables: new BondTables(wanting, walls, [bond], heights), walls };
}

describe("starts of walls whose bond is to go on", () => {
  it("are those of each wall, and those that come to it round the corner", () => {
    const { tables: all, walls } = tables({});
    all.starts.forEach((starts, i) => {
      const own = walls[i]!.starts.map(({ x }) => x);
      assert.ok(own.every((x) => starts.some((way) => way.x === x)));
      assert.ok(starts.length > own.length);
    });
    assert.equal(all.isThinned, false);
  });

  it("are the stated one alone where one is stated, which then comes to the other wall", () => {
    const { tables: all } = tables({ one: "tile centred on wall" });
    assert.equal(all.starts[0]!.length, 1);
    const { carried, missless } = all.beside(bond, 1, all.starts[0]![0]!);
    assert.equal(carried.length, 4);
    assert.ok(carried.every(({ x }) => missless.has(x)));
  });

  it("miss what stands between them and the bond", () => {
    const { tables: all } = tables({ one: "tile centred on wall", two: "tile centred at 6 7/8" });
    // The second's first tile shows 3 9/16 in; 3 7/16 in is wanted.
    const [one, two] = [0, 1].map((i) => all.standing(i, all.starts[i]![0]!));
    assert.equal(all.missed(bond, 1, two!, one!) / NM_PER.inch, 1 / 8);
    assert.equal(all.missed(bond, 0, one!, two!) / NM_PER.inch, 1 / 8);
    assert.equal(all.beside(bond, 1, all.starts[0]![0]!).missless.has(all.starts[1]![0]!.x), false);
  });
});
