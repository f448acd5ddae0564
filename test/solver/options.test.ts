import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { compareScores, firstDifference } from "../../src/solver/choose/index.js";
import { optionsOf, startedLays, type WallOptions } from "../../src/solver/index.js";
import { panelText } from "./free-wall-text.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { validate } from "../support/validate.js";

const INCH = NM_PER.inch;

/** A wall of 6 x 3 tile at 1/8, from 1/8 to 1/8 inside its sides. */
const plan = (lay: string, size = "36 1/4 x 24 1/4", bond = "stack"): string => `units inch
tile field "6 x 3" {
  face 6 x 3
  thickness 3/8
}
wall back "Back" {
  size ${size}
  bottom floor movement 1/8
  left wall movement 1/8
  right wall movement 1/8
  top ceiling movement 1/8
  lay field {
    bond ${bond}
${lay}
  }
}
`;

function options(text: string): WallOptions {
  const answer = solveClean(text);
  const found = optionsOf(answer.plan, firstWall(answer).wall);
  assert.ok(found);
  for (const { wall } of found.options) validate({ plan: answer.plan, walls: [wall] });
  return found;
}

const OPEN = "joint 1/8";
const STATED = "joint 1/8\n across full tile from left\n up full course from bottom";

describe("optionsOf", () => {
  it("has the best first, and the plan's own among them, once", () => {
    for (const text of [plan(OPEN), plan(STATED), plan(STATED, "40 x 30", "running 1/3")]) {
      const { options: ways } = options(text);
      assert.ok(ways.length >= 2);
      assert.equal(ways.filter(({ had }) => had).length, 1);
      for (let i = 1; i < ways.length; i++) {
        assert.ok(compareScores(ways[i - 1]!.score, ways[i]!.score) <= 0);
      }
    }
  });

  it("gives what the solver chose, and what it chose from, where the start is open", () => {
    const answer = solveClean(plan(OPEN));
    const { wall, laid } = firstWall(answer);
    const found = optionsOf(answer.plan, wall)!;
    const choice = laid.choice!;
    assert.equal(found.options[0]!.had, true);
    assert.deepEqual(
      found.options.map(({ score }) => score),
      [choice.chosen, ...choice.others].map(({ score }) => score),
    );
    assert.deepEqual([found.left, found.weighed], [choice.left, choice.weighed]);
  });

  it("says of a start that is written what the solver would choose, and on which measure it gains", () => {
    const found = options(plan(STATED, "33 1/4 x 24 1/4"));
    assert.deepEqual(found.left, []);
    const own = found.options.find(({ had }) => had)!;
    const [best] = found.options;
    assert.equal(best!.had, false);
    assert.equal(best!.behind, null);
    assert.equal(own.behind, firstDifference(best!.score, own.score));
    assert.equal(own.behind, "underHalf");
    assert.deepEqual(own.ends.left, [6 * INCH]);
    // 33 - 5 x (6 + 1/8) = 2 3/8.
    assert.deepEqual(own.ends.right, [2.375 * INCH]);
    // Shared out evenly between two ends: (2 3/8 + 6) / 2.
    assert.deepEqual([best!.ends.left, best!.ends.right], [[4.1875 * INCH], [4.1875 * INCH]]);
  });

  it("opens what is stated beside what is left open", () => {
    const half = "joint 1/8\n across tile centred at 1";
    const found = options(plan(half, "33 1/4 x 24 1/4"));
    assert.deepEqual(found.left, ["up"]);
    const own = found.options.find(({ had }) => had)!;
    assert.ok(compareScores(found.options[0]!.score, own.score) < 0);
  });

  it("keeps the joint that is written, and weighs a range", () => {
    for (const { joint } of options(plan(STATED)).options) assert.equal(joint, INCH / 8);
    const ranged = options(plan("joint 1/16 to 1/8"));
    assert.ok(ranged.left.includes("joint"));
    for (const { joint } of ranged.options) assert.ok(joint >= INCH / 16 && joint <= INCH / 8);
  });

  it("tells the ends of each course until the bond begins again", () => {
    const [best] = options(plan(OPEN, "40 x 30", "running 1/3")).options;
    assert.equal(best!.ends.left.length, 3);
    assert.equal(best!.ends.right.length, 3);
  });

  it("opens each lay of a wall by itself, the others staying as they are", () => {
    const answer = solveClean(panelText({ dado: "across tile centred at 5" }));
    const { wall } = firstWall(answer);
    const [dado, field] = startedLays(wall);
    assert.deepEqual([dado!.lay.name, field!.lay.name], ["dado", "field"]);
    const found = optionsOf(answer.plan, wall, field)!;
    assert.equal(found.laid, field);
    assert.ok(found.options.length > 1);
    for (const { wall: laid, lay, had } of found.options) {
      validate({ plan: answer.plan, walls: [laid] });
      assert.deepEqual([...laid.lays[0]!.pieces.bounds], [...dado!.pieces.bounds]);
      assert.equal(lay, laid.lays[1]);
      assert.equal(had, lay === field);
    }
    assert.deepEqual(optionsOf(answer.plan, wall), optionsOf(answer.plan, wall, dado));
  });

  it("starts what a block lays at one place: its other tiles, and what goes on from it", () => {
    const list = `joint 1/8\n courses 2 of field, 1 of liner, rest of field`;
    const liner = `tile liner "liner" {\n face 5 x 1\n thickness 3/8\n}\n`;
    const answer = solveClean(plan(list).replace("wall back", `${liner}wall back`));
    const { wall } = firstWall(answer);
    assert.deepEqual(
      startedLays(wall).map(({ lay }) => lay.name),
      ["field"],
    );
    for (const { wall: laid, had, across } of optionsOf(answer.plan, wall)!.options) {
      const [low, band, high] = laid.lays;
      assert.equal((high!.lattice.x - low!.lattice.x) % (low!.lattice.face.across + INCH / 8), 0);
      if (!had) assert.deepEqual(band!.across, across);
    }
  });

  it("has none of a wall that isn't laid", () => {
    const answer = solveClean('units inch\nwall bare "Bare" {\n size 10 x 10\n}\n');
    assert.equal(optionsOf(answer.plan, answer.solved.walls[0]!), null);
  });
});
