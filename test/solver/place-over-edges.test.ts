import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import type { Plan, Wall } from "../../src/model/index.js";
import { chooseFor } from "../../src/solver/choose-lay.js";
import { solve, type SolvedPlan } from "../../src/solver/index.js";
import { layWall } from "../../src/solver/lay-wall.js";
import { placeOverEdges } from "../../src/solver/place-over-edges.js";
import { settle } from "../../src/solver/room/index.js";
import { planOf } from "../language/telling.js";
import { randomFrom, type Random } from "../support/random.js";
import { validate } from "../support/validate.js";
import { type PanelText, panelText } from "./free-wall-text.js";
import { compare, costOfLaid, STEP } from "./room/every-layout.js";

const IN = NM_PER.inch;
const START = "across full tile from left";
const sixtyFourths = (steps: number): string => `${steps}/64`;

function solved(parts: PanelText): SolvedPlan {
  const answer = solve(planOf(panelText(parts)));
  validate(answer);
  return answer;
}

/** The cost of the best place in steps of 1/64 in, both lays being stated. */
function bestOfEveryPlace(plan: Plan): number[] {
  const [wall] = plan.walls;
  const { at, free } = wall!.openings[0]!;
  const between = (range: { min: number; max: number } | null, own: number): number[] =>
    range
      ? Array.from({ length: (range.max - range.min) / STEP + 1 }, (_, i) => range.min + i * STEP)
      : [own];
  const costs = between(free.x, at.x).flatMap((x) =>
    between(free.y, at.y).map((y) => costOfLaid(laidWith(plan, wall!, { x, y }))),
  );
  return costs.reduce((a, b) => (compare(b, a) < 0 ? b : a));
}

function laidWith(plan: Plan, asked: Wall, at: { x: number; y: number }): SolvedPlan {
  const wall = settle(asked, { stop: asked.size.up, places: [at] });
  const standing = { ...plan, walls: [wall] };
  return { plan: standing, walls: [layWall(standing, wall, (plot) => chooseFor(plot, new Map()))] };
}

describe("an opening that may lie over the edge between lays", () => {
  const niche = (at: string) => `niche n {\n at ${at}\n size 8 x 8\n movement 0\n }`;

  it("is placed for the tiles of both", () => {
    const wishes = "prefer {\n whole courses at head of n\n few cuts\n}";
    const { walls, room } = solved({
      ...{ wishes, dado: START, field: START, openings: niche("9, 8 to 11") },
    });
    // Its head comes to 16 to 19 in, where the field alone is: its first course ends at 16 1/4 in.
    assert.equal(walls[0]!.wall.openings[0]!.at.y, (8 + 1 / 4) * IN);
    assert.deepEqual([room!.unsettled, room!.capped], [[], false]);
  });

  it("has the lays' starts chosen again for it, and says that a better layout may be left", () => {
    const wishes = "prefer {\n centre on n\n}";
    const { walls, room } = solved({ wishes, openings: niche("9 to 14, 8") });
    const [opening] = walls[0]!.wall.openings;
    const middle = 2 * opening!.at.x + opening!.size.across;
    for (const { lattice } of walls[0]!.lays) {
      const module = lattice.face.across + lattice.joint;
      const off = (middle - 2 * lattice.x - lattice.face.across) % module;
      assert.equal(off === 0 ? 0 : module - Math.abs(off), 0);
    }
    assert.deepEqual([room!.unsettled, room!.capped], [[], true]);
  });

  it("stays where it may first stand where it can't be kept apart from what is there", () => {
    const text = panelText({ dado: START, field: START, openings: niche("0, 8 to 11") });
    const { walls, room } = solve(planOf(text.replace("left free", "left wall movement 1")));
    assert.equal(walls[0]!.wall.openings[0]!.at.y, 8 * IN);
    assert.deepEqual(
      room!.unsettled.map(({ opening, why }) => [opening, why]),
      [["n", "spans"]],
    );
  });

  it("is left to the lays where none is named", () => {
    const plan = planOf(panelText({ openings: niche("9, 8 to 11") }));
    const [wall] = plan.walls;
    const found = placeOverEdges(plan, { asked: wall!, wall: wall!, starts: new Map() }, [], []);
    assert.deepEqual(found, { wall, placed: [], capped: false });
  });
});

function isNeverWorse(seed: number, at: (random: Random) => string, wishes: readonly string[]) {
  const random = randomFrom(seed);
  const text = panelText({
    faces: [
      `${sixtyFourths(random.integer(50, 70))} x ${sixtyFourths(random.integer(36, 46))}`,
      `${sixtyFourths(random.integer(44, 60))} x ${sixtyFourths(random.integer(36, 48))}`,
    ],
    ...{ size: sixtyFourths(random.integer(190, 240)), height: "230/64", joint: "4/64" },
    ...{ dado: START, field: "across full tile from right" },
    wishes: `prefer {\n${wishes.join("\n")}\n}`,
    openings: `niche n {\n at ${at(random)}\n size ${sixtyFourths(random.integer(40, 60))} x 50/64\n movement 2/64\n }`,
  });
  const plan = planOf(text);
  const answer = solve(plan);
  const cost = costOfLaid(answer);
  const best = bestOfEveryPlace(plan);
  const told = JSON.stringify({ seed, cost, best });
  assert.ok(compare(cost, best) <= 0, `${told}\n${text}`);
  assert.equal(answer.room!.capped, false, told);
  assert.deepEqual(answer.room!.unsettled, []);
}

describe("a place over the edge between lays that are stated, against every place in steps of 1/64 in", () => {
  it("is never worse up", () => {
    for (const seed of [1, 2, 3, 4]) {
      const at = (random: Random) => `70/64, ${sixtyFourths(random.integer(30, 40))} to 110/64`;
      isNeverWorse(seed, at, ["no cut under 1/4", "few cuts"]);
      isNeverWorse(seed, at, ["whole courses at sill of n", "few cuts"]);
    }
  });

  it("is never worse across", () => {
    for (const seed of [5, 6, 7, 8]) {
      const at = (random: Random) => `${sixtyFourths(random.integer(30, 40))} to 110/64, 60/64`;
      isNeverWorse(seed, at, ["no cut under 1/4", "few cuts"]);
      isNeverWorse(seed, at, ["centre on n"]);
    }
  });
});
