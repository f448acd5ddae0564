import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { bareLine, courseEnd, endLine } from "../../src/solver/course-end.js";
import { bondedRoom } from "./room/bonded-room.js";

const inches = (nm: number): number => nm / NM_PER.inch;

describe("how a course ends at a side", () => {
  const solved = bondedRoom({
    one: "tile centred on wall",
    two: "full tile from left",
    bond: "running 1/2",
    wishes: [],
  });
  const [one, two] = solved.walls.map(({ region, lays: [lay] }) => ({
    region,
    lattice: lay!.lattice,
  }));

  it("is what is seen of the last tile, and how wide it is cut behind the other wall's", () => {
    const end = courseEnd(one!.region, one!.lattice, "right", 1);
    // The last tile of the centred course begins at 57 5/16; the other's tile stands 1/8 before 60.
    assert.deepEqual([end.shown, end.cut].map(inches), [2 + 9 / 16, 2 + 11 / 16]);
  });

  it("goes with the bond", () => {
    // Half a module of 6 1/16 further to the right, the tile before is the last that is cut.
    const end = courseEnd(one!.region, one!.lattice, "right", 2);
    assert.equal(inches(end.shown), 2 + 9 / 16 - 3 - 1 / 32 + 6 + 1 / 16);
  });

  it("is a whole tile where one begins there", () => {
    assert.equal(inches(courseEnd(two!.region, two!.lattice, "left", 1).shown), 6);
  });

  it("ends what is seen at the other's tile, and what is cut at the region's side", () => {
    const tile = [0, NM_PER.inch] as const;
    assert.equal(inches(endLine(one!.region, "right", ...tile)), 59 + 7 / 8);
    assert.equal(bareLine(one!.region, "right", ...tile), one!.region.bounds.right);
  });
});
