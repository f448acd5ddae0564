import assert from "node:assert/strict";
import type { Lay, Plan, Wanted } from "../../../src/model/index.js";
import { measureRoom } from "../../../src/solver/room/measure-room.js";
import type { SolvedWall } from "../../../src/solver/index.js";
import { NM_PER } from "../../../src/measure/index.js";
import { solveWall } from "../../../src/solver/solve-wall.js";
import { type DadoText, dadoText } from "../../rooms/dado-text.js";
import { solveText } from "../../support/solve-text.js";
import { window } from "../choose/model-plan.js";
import { layOf, wallOf } from "../several-lays.js";

/**
 * Two walls of 310 x 230 at a corner. The first is tiled from 3 to 296 (the other's 11 and a joint of 3)
 * across: two whole tiles and one of 89; and from 3 to 227 up: four courses to 209 and one of 16 from 211.
 * The second is tiled from 3 to 307: three whole tiles; its courses begin with one of 8 from 3 to 11, four
 * whole ones from 13 to 219 and one of 6 from 221.
 */
const field = layOf("field");
const higher: Lay = { ...field, up: { kind: "joint", y: 12 } };

function room(): { plan: Plan; walls: SolvedWall[] } {
  const { plan, wall } = wallOf([field], {
    size: [310, 230],
    sides: { right: { meets: { kind: "corner", wall: "side", lap: "over" } } },
    openings: [window([100, 100], [50, 50], { movement: 0 })],
  });
  const side = {
    ...wall,
    name: "side",
    edges: {
      ...wall.edges,
      right: { ...wall.edges.right, meets: { kind: "wall" } as const },
      left: {
        ...wall.edges.left,
        meets: { kind: "corner", wall: "back", lap: "under" } as const,
      },
    },
    openings: [],
    lays: [higher],
  };
  const whole = { ...plan, walls: [wall, side] };
  return { plan: whole, walls: whole.walls.map((each) => solveWall(whole, each, new Map())) };
}

const { plan, walls } = room();

function missed(wanted: Wanted, wall: string | null = null): number {
  return measureRoom(plan, walls, [{ wanted, wall, origin: field.origin }]).misses[0]!;
}

describe("what a laid room misses", () => {
  it("is how far bed joints are apart at its corners", () => {
    // Courses at 3 and at 13.
    assert.equal(missed({ kind: "courses-meet" }), 10);
    assert.equal(missed({ kind: "courses-meet" }, "back"), 10);
    assert.equal(missed({ kind: "courses-meet" }, "elsewhere"), 0);
  });

  it("is that of all lays that meet there, each with the one beside most of it", () => {
    const missedIn = (parts: DadoText): number => {
      const { plan: read, solved } = solveText(dadoText(parts));
      const { misses } = measureRoom(read, solved.walls, [
        { wanted: { kind: "courses-meet" }, wall: null, origin: field.origin },
      ]);
      return misses[0]! / NM_PER.inch;
    };
    const start = (joint: string) => `across full tile from left\n    up joint at ${joint}`;
    const back = { dado: start("12"), field: start("36") };
    assert.equal(missedIn({ back, side: back }), 0);
    // The dado 1/4 in higher; the field 1/8 in lower; both.
    const [dado, low] = [start("12 1/4"), start("35 7/8")];
    assert.equal(missedIn({ back, side: { ...back, dado } }), 1 / 4);
    assert.equal(missedIn({ back, side: { ...back, field: low } }), 1 / 8);
    assert.equal(missedIn({ back, side: { dado, field: low } }), 1 / 4 + 1 / 8);
    // Up to 26 in on the other wall, the dado is still beside the dado most.
    assert.equal(missedIn({ back, side: { dado, field: low }, sideTop: "26" }), 1 / 4 + 1 / 8);
  });

  it("adds up over the walls that a wish is for", () => {
    // A full course at 3 on the first; 10 higher on the other.
    assert.equal(missed({ kind: "whole-at-side", at: "bottom" }, "back"), 0);
    assert.equal(missed({ kind: "whole-at-side", at: "bottom" }, "side"), 10);
    assert.equal(missed({ kind: "whole-at-side", at: "bottom" }), 10);
  });

  it("is how far an opening's sill or middle is from the tile's", () => {
    const of = { wall: "back", opening: "sash" };
    // Courses end at 53 and 105: the sill at 100 is 5 under that.
    assert.equal(missed({ kind: "whole-at-opening", at: "sill", of }), 5);
    // Tiles have their middles at 53 and 155, the joint between at 104; the opening has its own at 125.
    assert.equal(missed({ kind: "centre", on: of }), 125 - 104);
  });

  it("is its cut pieces, the notched ones twice, where few are wanted", () => {
    // The first: five at its right end, two more in the top course, four that the opening notches.
    assert.equal(missed({ kind: "few-cuts" }, "back"), 5 + 2 + 2 * 4);
    // The second: three at the bottom and three at the top.
    assert.equal(missed({ kind: "few-cuts" }, "side"), 6);
    assert.equal(missed({ kind: "few-cuts" }), 15 + 6);
  });

  it("is the cuts under a size", () => {
    // The second's courses of 8 and of 6; the first's of 16.
    assert.equal(missed({ kind: "no-cut", under: 7 }), 3);
    assert.equal(missed({ kind: "no-cut", under: 9 }), 6);
    assert.equal(missed({ kind: "no-cut", under: 17 }, "back"), 3);
  });
});

describe("a laid room's score", () => {
  it("is its walls' added up", () => {
    const { score } = measureRoom(plan, walls, []);
    assert.deepEqual([score.tiles, score.cuts], [3 * 5 + 3 * 6, 15 + 6]);
  });
});
