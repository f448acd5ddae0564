import assert from "node:assert/strict";
import { compareScores } from "../../../src/solver/choose/index.js";
import { search } from "../../../src/solver/choose/search.js";
import { regionOf } from "../../../src/solver/region.js";
import { inches, oneWall, SIXTEENTH } from "./model-plan.js";

function searched({ plan, wall, lay }: ReturnType<typeof oneWall>) {
  return search(plan, wall, lay, (joint) => regionOf(plan, wall, joint));
}

describe("the search for the best start", () => {
  const given = { face: [inches(6), inches(3)], size: [inches(59), inches(47)] } as const;

  it("finds the same whichever way a lay is left open, when one part is then stated", () => {
    const open = oneWall(given);
    const { best, capped } = searched(open);
    assert.equal(capped, false);
    const stated = oneWall({ ...given, joint: [best.field.ground.joint, SIXTEENTH] });
    const again = searched(stated).best;
    assert.deepEqual([again.x, again.y, again.score], [best.x, best.y, best.score]);
  });

  it("never does worse with a range than with the joint at either end of it", () => {
    const range = [SIXTEENTH, 2 * SIXTEENTH] as const;
    const scoreWith = (joint: readonly [number, number]) => {
      return searched(oneWall({ ...given, joint })).best.score;
    };
    const free = scoreWith(range);
    assert.ok(compareScores(free, scoreWith([range[0], range[0]])) <= 0);
    const widest = { ...scoreWith([range[1], range[1]]), jointOver: SIXTEENTH };
    assert.ok(compareScores(free, widest) <= 0);
  });
});
