import assert from "node:assert/strict";
import { NM_PER, type Nm } from "../../src/measure/index.js";
import type { Plan, Wall } from "../../src/model/index.js";
import { solve, type SolvedLay, type SolvedPlan } from "../../src/solver/index.js";
import { latticeOf } from "../../src/solver/lattice.js";
import { layRegion } from "../../src/solver/lay-region.js";
import { plotFor } from "../../src/solver/lay-wall.js";
import { layPieces } from "../../src/solver/pieces.js";
import { settle } from "../../src/solver/room/settle.js";
import { upOrigin } from "../../src/solver/start.js";
import { planOf } from "../language/telling.js";
import { randomFrom, type Random } from "../support/random.js";
import { validate } from "../support/validate.js";
import { compare, costOfLaid, STEP } from "./room/every-layout.js";
import { type PanelText, panelText } from "./free-wall-text.js";

const IN = NM_PER.inch;

function solved(parts: PanelText): SolvedPlan {
  const answer = solve(planOf(panelText(parts)));
  validate(answer);
  return answer;
}

describe("a wall of several lays that leaves places free", () => {
  const NICHE = "niche n {\n at 8 to 12, 18 to 22\n size 8 x 8\n movement 1/8\n }";
  const WISHES = "prefer {\n whole courses at sill of n\n few cuts\n}";

  it("has them settled by the lay in which they lie, for its own courses", () => {
    const { walls, plan, room } = solved({ wishes: WISHES, openings: NICHE });
    const [back] = walls;
    // The field begins at 12 1/4 in, so that its second course ends at 20 3/8: there begins what the niche takes.
    assert.equal(back!.wall.openings[0]!.at.y, (20 + 1 / 2) * IN);
    assert.equal(plan.walls[0], back!.wall);
    assert.deepEqual(room!.unsettled, []);
    assert.equal(room!.capped, false);
  });
});

describe("a list of courses that leaves a place free over its first run", () => {
  it("has it settled where the head joints go on from that run", () => {
    const more = `lay field {
      bond stack
      joint 0
      covers bottom to 36
      across tile centred at 3
      courses 2, 1 of dado, rest
    }`;
    // Tiles of 4 in from 1 in on: of 10 to 15 in only at 13 in none beside the niche is cut across.
    const NICHE = "niche n {\n at 10 to 15, 18\n size 8 x 8\n movement 0\n }";
    const text = panelText({ wishes: "prefer {\n few cuts\n}", openings: NICHE }).replace(
      / {2}lay dado \{[^}]*\}\n {2}lay field \{[^}]*\}/,
      more,
    );
    const answer = solve(planOf(text));
    validate(answer);
    assert.deepEqual(
      answer.walls[0]!.lays.map(({ lay }) => lay.name),
      ["field", "dado", "field-2"],
    );
    assert.equal(answer.walls[0]!.wall.openings[0]!.at.x, 13 * IN);
  });
});

/** The best cost of the field's layouts in steps of 1/64 in, whatever is free where it may be. */
function bestOfField(asked: Plan, [dado]: readonly SolvedLay[]): number[] {
  let best: number[] | null = null;
  for (const wall of everyWay(asked.walls[0]!)) {
    const plan = { ...asked, walls: [wall] };
    const plot = plotFor(plan, wall, "field", () => dado!);
    const { lay } = plot;
    const joint = lay.joint.min;
    const region = layRegion(plot, joint);
    const y = upOrigin({ wall, region, lay, joint }, lay.up!);
    for (let x = 0; x < lay.tile.face.across + joint; x += STEP) {
      const { lattice, courses, pieces } = layPieces(region, latticeOf(lay, joint, x, y));
      const laid = { ...dado!, lay, region, joint, lattice, courses, pieces };
      const cost = costOfLaid(alone(plan, laid));
      if (!best || compare(cost, best) < 0) best = cost;
    }
  }
  return best!;
}

function alone(plan: Plan, laid: SolvedLay): SolvedPlan {
  const [wall] = plan.walls;
  return {
    plan,
    walls: [
      {
        wall: wall!,
        region: laid.region as never,
        lays: [laid],
        trims: [],
        insides: [],
        refused: null,
      },
    ],
  };
}

function* everyWay(wall: Wall): Generator<Wall> {
  const between = (range: { min: Nm; max: Nm } | null, at: Nm): Nm[] =>
    range
      ? Array.from({ length: (range.max - range.min) / STEP + 1 }, (_, i) => range.min + i * STEP)
      : [at];
  const [opening] = wall.openings;
  for (const stop of between(wall.stop, wall.size.up)) {
    for (const x of between(opening!.free.x, opening!.at.x)) {
      for (const y of between(opening!.free.y, opening!.at.y)) {
        yield settle(wall, { stop, places: [{ x, y }] });
      }
    }
  }
}

const sixtyFourths = (steps: number): string => `${steps}/64`;

function isNeverWorse(seed: number, parts: (random: Random) => PanelText): void {
  const random = randomFrom(seed);
  const plan = planOf(
    panelText({
      faces: [
        `${sixtyFourths(random.integer(50, 70))} x ${sixtyFourths(random.integer(20, 26))}`,
        `${sixtyFourths(random.integer(44, 60))} x ${sixtyFourths(random.integer(36, 48))}`,
      ],
      size: sixtyFourths(random.integer(190, 240)),
      joint: "4/64",
      ...parts(random),
    }),
  );
  const answer = solve(plan);
  const { lays, wall } = answer.walls[0]!;
  const cost = costOfLaid(alone({ ...plan, walls: [wall] }, lays[1]!));
  const best = bestOfField(plan, lays);
  const told = JSON.stringify({ seed, cost, best, room: { ...answer.room, asked: 0 } });
  assert.ok(compare(cost, best) <= 0, told);
  assert.equal(answer.room!.capped, false, told);
  assert.deepEqual(answer.room!.unsettled, []);
}

describe("what the lay over another settles, against every layout in steps of 1/64 in", () => {
  const niche = (random: Random, x: string, y: string): string =>
    `niche n {\n at ${x}, ${y}\n size ${sixtyFourths(random.integer(40, 60))} x 40/64\n movement 2/64\n }`;

  it("is never worse for a place across", () => {
    for (const seed of [1, 2, 3]) {
      isNeverWorse(seed, (random) => ({
        height: "230/64",
        wishes: "prefer {\n few cuts\n}",
        openings: niche(random, `60/64 to ${sixtyFourths(random.integer(66, 74))}`, "100/64"),
      }));
    }
  });

  it("is never worse for a place up", () => {
    for (const seed of [4, 5, 6]) {
      isNeverWorse(seed, (random) => ({
        height: "230/64",
        wishes: "prefer {\n centre on n\n no cut under 1/4\n}",
        openings: niche(random, "70/64", `90/64 to ${sixtyFourths(random.integer(96, 108))}`),
      }));
    }
  });

  it("is never worse for a height to stop at", () => {
    for (const seed of [7, 8]) {
      isNeverWorse(seed, (random) => ({
        height: `220/64 to ${sixtyFourths(random.integer(232, 250))}`,
        wishes: "prefer {\n whole courses at top\n equal ends\n}",
        openings: niche(random, "60/64", "100/64"),
      }));
    }
  });
});

describe("a wall of which courses are set that leaves a place free", () => {
  it("has it settled by what is still to come, in its own courses", () => {
    const text = `units inch
tile field {
  face 4 x 4
  thickness 5/16
}
wall back {
  size 40 x 36
  bottom free
  top free
  left free
  right free
  niche n {
    at 10 to 15, 15 to 18
    size 8 x 8
    movement 0
  }
  lay field {
    bond stack
    joint 0
    across full tile from left
    up full course from bottom
    set courses 1 to 3 top 12 1/8
  }
}
`;
    const answer = solve(planOf(`prefer {\n few cuts\n}\n${text}`));
    validate(answer);
    const { at } = answer.walls[0]!.wall.openings[0]!;
    // The fourth course begins at 12 1/8 in where the third was measured, so that the fifth does at 16 1/8.
    assert.deepEqual(at, { x: 12 * IN, y: (16 + 1 / 8) * IN });
    assert.deepEqual(answer.room!.unsettled, []);
  });
});
