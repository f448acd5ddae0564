import assert from "node:assert/strict";
import { compareScores } from "../../../src/solver/choose/index.js";
import { search } from "../../../src/solver/choose/search.js";
import { inches, oneWall, SIXTEENTH } from "./model-plan.js";

describe("the search for the best start", () => {
  const given = { face: [inches(6), inches(3)], size: [inches(59), inches(47)] } as const;

  it("finds the same whichever way a lay is left open, when one part is then stated", () => {
    const open = oneWall(given);
    const { best, capped } = search(open.plan, open.wall, open.lay);
    assert.equal(capped, false);
    const stated = oneWall({ ...given, joint: [best.field.ground.joint, SIXTEENTH] });
    const again = search(stated.plan, stated.wall, stated.lay).best;
    assert.deepEqual([again.x, again.y, again.score], [best.x, best.y, best.score]);
  });

  it("never does worse with a range than with the joint at either end of it", () => {
    const range = [SIXTEENTH, 2 * SIXTEENTH] as const;
    const scoreWith = (joint: readonly [number, number]) => {
      const { plan, wall, lay } = oneWall({ ...given, joint });
      return search(plan, wall, lay).best.score;
    };
    const free = scoreWith(range);
    assert.ok(compareScores(free, scoreWith([range[0], range[0]])) <= 0);
    const widest = { ...scoreWith([range[1], range[1]]), jointOver: SIXTEENTH };
    assert.ok(compareScores(free, widest) <= 0);
  });
});
