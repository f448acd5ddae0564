import assert from "node:assert/strict";
import type { Lay, Plan, Wish } from "../../src/model/index.js";
import { solveTogether } from "../../src/solver/solve-together.js";
import { solveWall } from "../../src/solver/solve-wall.js";
import { area, layOf, past, wallOf } from "./several-lays.js";

/** Three whole tiles of 100 and two joints of 2 from 3 to 307; five courses of 50 from 3 to 261. */
const SIZE = [310, 264] as const;

const open = layOf("open", { across: null, up: null });
const low = layOf("low", { area: area({}, { courses: 2 }) });
const high = layOf("high", { area: area({ bottom: past("low") }) });

/** A wall with these lays, and one beside it whose lay is left to the solver. */
function planOf(lays: readonly Lay[]): Plan {
  const { plan, wall } = wallOf(lays, { size: SIZE });
  const side = { ...wall, name: "side", lays: [open] };
  return { ...plan, walls: [wall, side] };
}

const fewCuts: Wish = { wanted: { kind: "few-cuts" }, wall: null, origin: low.origin };

describe("walls that are laid together", () => {
  it("stand in the plan's order, and the plan is told as it was asked", () => {
    const plan = planOf([low, high]);
    const { walls, room } = solveTogether(plan, [fewCuts]);
    assert.deepEqual(
      walls.map(({ wall }) => wall.name),
      ["back", "side"],
    );
    assert.equal(room!.asked, plan);
    assert.equal(room!.capped, false);
  });

  it("are chosen for the room where one lay has all of a wall", () => {
    const [, side] = solveTogether(planOf([low, high]), [fewCuts]).walls;
    const { choice, pieces } = side!.lays[0]!;
    assert.equal(choice!.by, "room");
    assert.deepEqual([choice!.chosen.score.cuts, pieces.count], [0, 15]);
  });

  it("are chosen for the room lay by lay where they have several", () => {
    const plan = planOf([{ ...low, across: null }, high]);
    const [back] = solveTogether(plan, [fewCuts]).walls;
    const [first, second] = back!.lays;
    assert.deepEqual([first!.choice!.by, first!.choice!.left], ["room", ["across"]]);
    assert.equal(first!.choice!.chosen.score.cuts, 0);
    assert.equal(second!.choice, null);
    assert.deepEqual(
      back!.lays.map(({ courses }) => courses.length),
      [2, 3],
    );
  });

  it("are laid by themselves where they have several lays and nothing is wished or free", () => {
    const plan = planOf([{ ...low, across: null }, high]);
    const [back] = solveTogether(plan, []).walls;
    assert.equal(back!.lays[0]!.choice!.by, "wall");
    assert.deepEqual(back, solveWall(plan, plan.walls[0]!, new Map()));
  });

  it("stay bare where they ask for too many pieces or have no lay, the others laid", () => {
    // Tile of 1 x 1 with joints of 2 on 20,000 x 20,000: over forty million.
    const tiny: Lay = { ...low, area: null, tile: { ...low.tile, face: { across: 1, up: 1 } } };
    const plan = planOf([tiny]);
    const [back, side] = plan.walls;
    const huge = { ...back!, size: { across: 20_000, up: 20_000 } };
    const [refused, laid] = solveTogether({ ...plan, walls: [huge, side!] }, [fewCuts]).walls;
    assert.equal(refused!.lays.length, 0);
    assert.ok(refused!.refused!.pieces > refused!.refused!.most);
    assert.equal(laid!.lays[0]!.pieces.count, 15);
    const [bare] = solveTogether(planOf([]), [fewCuts]).walls;
    assert.deepEqual([bare!.lays, bare!.refused], [[], null]);
  });
});
