import assert from "node:assert/strict";
import type { Lay } from "../../src/model/index.js";
import { pieceBounds, pieceId, type SolvedLay, type SolvedWall } from "../../src/solver/index.js";
import { solveWall } from "../../src/solver/solve-wall.js";
import { area, layOf, past, place, sidesOf, wallOf, type Several } from "./several-lays.js";

function solved(lays: readonly Lay[], given: Several = {}): SolvedWall {
  const { plan, wall } = wallOf(lays, given);
  return solveWall(plan, wall, new Map());
}

function boxes({ pieces }: SolvedLay): number[][] {
  return Array.from({ length: pieces.count }, (_, i) => sidesOf(pieceBounds(pieces, i)));
}

const ends = (laid: SolvedLay) => [0, laid.pieces.count - 1].map((i) => pieceId(laid, i));

describe("a wall with no lay", () => {
  it("has its region and nothing in it", () => {
    const { lays, trims, region } = solved([]);
    assert.deepEqual([lays, trims, sidesOf(region.bounds)], [[], [], [3, 3, 997, 797]]);
  });
});

describe("a wall with lays on each other", () => {
  const low = layOf("low", { area: area({}, { courses: 3 }) });
  const high = layOf("high", { area: area({ bottom: past("low") }) });

  it("has them from the bottom up, whichever is stated first, each over the one before", () => {
    const { lays, region } = solved([high, low]);
    assert.deepEqual(
      lays.map(({ lay }) => lay.name),
      ["low", "high"],
    );
    assert.deepEqual(
      lays.map(({ region: own }) => sidesOf(own.bounds)),
      [
        [3, 3, 997, 157],
        [3, 159, 997, 797],
      ],
    );
    assert.deepEqual(sidesOf(region.bounds), [3, 3, 997, 797]);
    assert.deepEqual(
      lays.map(({ inner }) => inner),
      [["top"], ["bottom"]],
    );
  });

  it("counts its courses on", () => {
    const [under, over] = solved([low, high]).lays;
    assert.deepEqual([under!.below, over!.below], [0, 3]);
    // Across 994: nine modules of 102 and a tile of 76. Up from 159: twelve of 52, and a course of 14.
    assert.deepEqual(ends(under!), ["back/1/1", "back/3/10"]);
    assert.deepEqual(ends(over!), ["back/4/1", "back/16/10"]);
  });

  it("counts them on over every lay that is under one", () => {
    const middle = layOf("middle", { area: area({ bottom: past("low") }, { courses: 2 }) });
    const upper = layOf("upper", { area: area({ bottom: past("middle") }) });
    assert.deepEqual(
      solved([upper, middle, low]).lays.map(({ below }) => below),
      [0, 3, 5],
    );
  });

  it("has the pieces of one lay where the tile, the joint and the bond go on", () => {
    const bond = { kind: "running", p: 1, q: 3 } as const;
    const under = layOf("under", { bond, area: area({}, { courses: 4 }) });
    const over = layOf("over", {
      bond,
      area: area({ bottom: past("under") }),
      goesOnFrom: "under",
    });
    const whole = solved([layOf("whole", { bond })]).lays;
    assert.deepEqual(solved([over, under]).lays.flatMap(boxes), whole.flatMap(boxes));
  });

  it("starts the head joints of each lay by themselves unless they go on", () => {
    const bond = { kind: "running", p: 1, q: 2 } as const;
    const under = layOf("under", { bond, area: area({}, { courses: 3 }) });
    const over = layOf("over", { bond, area: area({ bottom: past("under") }) });
    // Course 4 of one lay would be shifted by 51.
    assert.equal(solved([under, over]).lays[1]!.lattice.x, 3);
    assert.equal(solved([under, { ...over, goesOnFrom: "under" }]).lays[1]!.lattice.x, 3 + 51);
  });
});

describe("a wall with a panel in the rest", () => {
  const panel = layOf("panel", {
    area: area({ left: place(207), right: place(307), bottom: place(159), top: place(209) }),
  });

  it("has one tile in a panel of its size, and a course of the rest cut round it", () => {
    const { lays } = solved([panel, layOf("rest")]);
    const [rest, one] = lays;
    assert.deepEqual([rest!.idPrefix, one!.idPrefix], ["back", "back/panel"]);
    assert.deepEqual(boxes(one!), [[207, 159, 307, 209]]);
    // The panel stands where tile 3 of course 4 would: the rest has all its pieces but that.
    const alone = solved([layOf("rest")]).lays[0]!;
    assert.deepEqual(
      boxes(rest!),
      boxes(alone).filter((box) => box.join() !== "207,159,307,209"),
    );
  });
});

describe("what the lays of a wall leave open", () => {
  const open = { across: null, up: null };

  it("is chosen for each in what it has of the wall", () => {
    // Three whole tiles from 3 to 307, a joint of 5, six whole ones from 312 to 922; five courses from 3 to 261.
    const left = layOf("left", { ...open, area: area({ right: place(307) }, { joint: 5 }) });
    const { lays } = solved([left, layOf("rest", open)], { size: [925, 264] });
    assert.deepEqual(
      lays.map(({ pieces }) => pieces.count),
      [3 * 5, 6 * 5],
    );
    for (const { choice, region, lattice } of lays) {
      const { cuts, slivers, imbalance } = choice!.chosen.score;
      assert.deepEqual([cuts, slivers, imbalance], [0, 0, 0]);
      assert.equal(lattice.y, 3);
      assert.equal((lattice.x - region.bounds.left) % 102, 0);
    }
  });

  it("is chosen on the courses that are under it", () => {
    // The lay under it has a joint of 2 and three courses, to 157; over that 159 to 261: two courses and no cut.
    const low = layOf("low", { area: area({}, { courses: 3 }) });
    const high = layOf("high", { up: null, area: area({ bottom: past("low") }) });
    const laid = solved([low, high], { size: [1000, 264] }).lays[1]!;
    assert.deepEqual(
      laid.courses.map(({ bottom }) => bottom),
      [159, 211],
    );
    assert.deepEqual(laid.choice!.left, ["up"]);
  });
});
