import assert from "node:assert/strict";
import type { Nm } from "../../../src/measure/index.js";
import type { Choice, Score } from "../../../src/solver/index.js";
import { choose, compareScores } from "../../../src/solver/choose/index.js";
import { latticeOf, moduleAcross, moduleUp } from "../../../src/solver/lattice.js";
import { regionOf } from "../../../src/solver/region.js";
import { acrossOrigin, upOrigin } from "../../../src/solver/start.js";
import { randomFrom } from "../../support/random.js";
import { laidScore } from "./laid-score.js";
import {
  FRAME,
  type Given,
  inches,
  type OneWall,
  oneWall,
  randomGiven,
  SIXTEENTH,
  STEP,
  type Variety,
  window,
} from "./model-plan.js";

/** Chooses, and checks that the starts as said have the score that is told. */
function chosen(one: OneWall): Choice {
  const { plan, wall, lay } = one;
  const { joint, across, up, choice } = choose(plan, wall, lay);
  const ground = { wall, region: regionOf(plan, wall, joint), lay, joint };
  const laid = laidScore(one, joint, acrossOrigin(ground, across), upOrigin(ground, up));
  assert.deepEqual(choice!.chosen.score, laid);
  assert.deepEqual({ joint, across, up }, pickStart(choice!));
  return choice!;
}

function pickStart({ chosen: { joint, across, up } }: Choice): object {
  return { joint, across, up };
}

/** The best score of all starts that are a whole number of steps apart. */
function bruteForce(one: OneWall, joints: readonly Nm[], step: Nm): { score: Score; at: string } {
  let best: { score: Score; at: string } | null = null;
  for (const joint of joints) {
    const lattice = latticeOf(one.lay, joint, 0, 0);
    const { left, bottom } = regionOf(one.plan, one.wall, joint).bounds;
    for (let x = left; x < left + moduleAcross(lattice); x += step) {
      for (let y = bottom; y < bottom + moduleUp(lattice); y += step) {
        const score = laidScore(one, joint, x, y);
        const isBetter = !best || compareScores(score, best.score) < 0;
        if (isBetter) best = { score, at: `joint ${joint}, x ${x}, y ${y}` };
      }
    }
  }
  return best!;
}

interface Trial {
  readonly seeds: readonly [from: number, to: number];
  readonly variety: Variety;
  readonly joints: readonly Nm[];
  readonly step: Nm;
}

/** The chosen start is at least as good as every one tried, on random walls of a few columns. */
function isNeverWorse({ seeds, variety, joints, step }: Trial): void {
  for (let seed = seeds[0]; seed <= seeds[1]; seed++) {
    const given = randomGiven(randomFrom(seed), variety);
    const one = oneWall({ ...given, joint: [joints[0]!, joints.at(-1)!] });
    const choice = chosen(one);
    if (choice.capped) continue;
    const brute = bruteForce(one, joints, step);
    const text = JSON.stringify({ seed, chosen: choice.chosen.score, brute });
    assert.ok(compareScores(choice.chosen.score, brute.score) <= 0, text);
  }
}

const PLAIN: Variety = { measured: false, openings: 0, holes: false, corners: true, most: 4 };
const FIXED = [4 * STEP];
const RANGE = [4, 5, 6, 7, 8].map((n) => n * STEP);

describe("the chosen start against brute force", () => {
  it("is never worse on walls without openings", () => {
    isNeverWorse({ seeds: [1, 25], variety: PLAIN, joints: FIXED, step: 8 * STEP });
  });

  it("is never worse round openings", () => {
    const variety = { ...PLAIN, openings: 2 };
    isNeverWorse({ seeds: [1, 25], variety, joints: FIXED, step: 11 * STEP });
  });

  it("is never worse along measured sides", () => {
    const variety = { ...PLAIN, openings: 1, measured: true };
    isNeverWorse({ seeds: [1, 16], variety, joints: FIXED, step: 24 * STEP });
  });

  it("is never worse with a range for the joint", () => {
    const variety = { ...PLAIN, openings: 1 };
    isNeverWorse({ seeds: [1, 25], variety, joints: RANGE, step: 24 * STEP });
  });

  it("is never worse than any sixty-fourth on a small wall with a window", () => {
    const one = oneWall({
      face: [inches(2.875), inches(1.875)],
      size: [inches(13), inches(9)],
      bond: { kind: "running", p: 1, q: 2 },
      openings: [window([inches(4), inches(3)], [inches(4.5), inches(3)])],
    });
    const { score } = chosen(one).chosen;
    assert.ok(compareScores(score, bruteForce(one, FIXED, 2 * STEP).score) <= 0);
  });

  it("is the same optimum where the steps contain it", () => {
    // Free sides and whole sixty-fourths: half and third of the face are whole steps, too.
    const free = { meets: { kind: "free", trim: null } } as const;
    const one = oneWall({
      face: [STEP * 240, STEP * 120],
      size: [STEP * 1000, STEP * 610],
      sides: { left: free, right: free, bottom: free, top: free },
    });
    const { score } = chosen(one).chosen;
    assert.deepEqual(score, bruteForce(one, FIXED, STEP).score);
  });
});

/** A back wall of a shower: a pan out of level, a window with a frame, everything left open. */
function showerWall(over: Partial<Given> = {}): OneWall {
  return oneWall({
    face: [inches(5.875), inches(2.875)],
    size: [inches(60), inches(96)],
    bond: { kind: "running", p: 1, q: 2 },
    joint: [SIXTEENTH, SIXTEENTH],
    sides: {
      left: { meets: { kind: "corner", wall: "side", lap: "under" } },
      bottom: {
        meets: { kind: "pan" },
        measured: [
          { at: 0, off: 0 },
          { at: inches(30), off: -3 * SIXTEENTH },
          { at: inches(60), off: 2 * SIXTEENTH },
        ],
      },
    },
    openings: [window([inches(18), inches(46.25)], [inches(24), inches(36)], { frame: FRAME })],
    ...over,
  });
}

describe("choosing a start", () => {
  const across = { kind: "tile", centre: { on: "wall" } } as const;
  const up = { kind: "full-course", from: "bottom" } as const;

  it("leaves a lay alone that states everything", () => {
    const { plan, wall, lay } = showerWall({ across, up });
    assert.deepEqual(choose(plan, wall, lay), { joint: SIXTEENTH, across, up, choice: null });
  });

  it("keeps what the plan states and says what was left open", () => {
    const onlyUp = chosen(showerWall({ across }));
    assert.deepEqual(onlyUp.left, ["up"]);
    assert.equal(onlyUp.chosen.across, across);
    const onlyAcross = chosen(showerWall({ up }));
    assert.deepEqual(onlyAcross.left, ["across"]);
    assert.equal(onlyAcross.chosen.up, up);
    const onlyJoint = chosen(showerWall({ across, up, joint: [SIXTEENTH, 2 * SIXTEENTH] }));
    assert.deepEqual(onlyJoint.left, ["joint"]);
    assert.deepEqual(chosen(showerWall()).left, ["across", "up"]);
  });

  it("weighs all that a shower's wall leaves open, its joint too", () => {
    const choice = chosen(showerWall({ joint: [SIXTEENTH, 2 * SIXTEENTH] }));
    assert.deepEqual(choice.left, ["across", "up", "joint"]);
    // Its pan is measured: there may be a better start at a joint within the range.
    assert.equal(choice.capped, true);
    assert.equal(chosen(showerWall()).capped, false);
  });

  it("tells other options that differ, best first, none better than the chosen one", () => {
    const { chosen: best, others, decidedBy } = chosen(showerWall());
    assert.equal(others.length, 4);
    const scores = [best, ...others].map((option) => option.score);
    for (let i = 1; i < scores.length; i++) {
      assert.ok(compareScores(scores[i - 1]!, scores[i]!) <= 0);
    }
    assert.equal(decidedBy, "slivers");
  });

  it("says the simplest of equally good starts", () => {
    const one = oneWall({ face: [inches(6), inches(6)], size: [inches(45.25), inches(45.25)] });
    assert.deepEqual(pickStart(chosen(one)), {
      joint: SIXTEENTH,
      across: { kind: "joint", centre: { on: "wall" } },
      up: { kind: "joint", y: inches(22.625) % (inches(6) + SIXTEENTH) },
    });
  });

  it("keeps the least joint where a wider one gains nothing", () => {
    const one = oneWall({
      face: [inches(6), inches(6)],
      size: [inches(45.25), inches(45.25)],
      joint: [SIXTEENTH, 2 * SIXTEENTH],
    });
    assert.equal(chosen(one).chosen.joint, SIXTEENTH);
  });
});

describe("choosing a start where there is little to choose", () => {
  const given = { face: [inches(6), inches(3)], size: [inches(60), inches(40)] } as const;
  const measured = [
    { at: 0, off: 0 },
    { at: inches(30), off: SIXTEENTH },
  ];

  it("lays one cut tile where the tile is larger than the wall", () => {
    const { score } = chosen(oneWall({ ...given, face: [inches(100), inches(100)] })).chosen;
    assert.deepEqual([score.tiles, score.cuts, score.slivers], [1, 1, 0]);
  });

  it("lays nothing where nothing is left of the wall", () => {
    const covered = window([-10, -10], [inches(61), inches(41)]);
    assert.equal(chosen(oneWall({ ...given, openings: [covered] })).chosen.score.tiles, 0);
    assert.equal(chosen(oneWall({ ...given, size: [STEP, STEP] })).chosen.score.tiles, 0);
  });

  it("works without joints", () => {
    const { score } = chosen(oneWall({ ...given, joint: [0, 0] })).chosen;
    assert.equal(score.slivers, 0);
  });

  it("is done at once with tiles of a nanometre", () => {
    const { plan, wall, lay } = oneWall({ ...given, face: [1, 1], joint: [0, 0] });
    assert.equal(choose(plan, wall, lay).choice!.chosen.score.slivers, 0);
  });

  it("costs the same on a wall of a million pieces", () => {
    const big = showerWall({ size: [inches(6000), inches(3000)], sides: {} });
    const { weighed, chosen: best } = choose(big.plan, big.wall, big.lay).choice!;
    assert.ok(best.score.tiles > 1_000_000);
    assert.ok(weighed < 10_000);
  });

  it("stops and says so where there is too much to weigh", () => {
    const openings = Array.from({ length: 100 }, (_, i) => {
      const at = [inches(10 + 30 * (i % 10)) + 12345 * i, inches(10 + 30 * Math.floor(i / 10))];
      return window(at as [Nm, Nm], [inches(14), inches(11)], { name: `w-${i}` });
    });
    const size = [inches(320), inches(320)] as const;
    const sides = { bottom: { measured }, left: { measured } };
    const joint = [SIXTEENTH, 2 * SIXTEENTH] as const;
    const choice = chosen(oneWall({ ...given, size, openings, sides, joint }));
    assert.equal(choice.capped, true);
  });
});
