import assert from "node:assert/strict";
import { layWall } from "../../src/solver/lay-wall.js";
import { solve } from "../../src/solver/index.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { validate } from "../support/validate.js";
import { WALL } from "../sheets/wall.js";

describe("layWall", () => {
  const answer = solveClean(WALL);
  const { wall, laid } = firstWall(answer);

  it("lays a wall as solving it does, from the start that was chosen", () => {
    assert.deepEqual(
      layWall(answer.plan, wall.wall, () => laid),
      solve(answer.plan).walls[0],
    );
  });

  it("lays it from another start, and keeps all laws", () => {
    const up = { kind: "full-course", from: "top" } as const;
    const other = layWall(answer.plan, wall.wall, () => ({ ...laid, up, choice: null }));
    validate({ plan: answer.plan, walls: [other, answer.solved.walls[1]!] });
    const [lay] = other.lays;
    assert.equal(lay!.courses.at(-1)!.top, other.region.bounds.top);
    assert.notEqual(lay!.lattice.y, laid.lattice.y);
  });
});
