import assert from "node:assert/strict";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { compareScores } from "../../../src/solver/choose/index.js";
import { startsAtJoint } from "../../../src/solver/choose/starts-at-joint.js";
import { Walk } from "../../../src/solver/choose/walk.js";
import { laidScore } from "./laid-score.js";
import { inches, oneWall, SIXTEENTH } from "./model-plan.js";

describe("a walk over pairs of starts", () => {
  const one = oneWall({
    face: [inches(6), inches(3)],
    size: [inches(59), inches(47)],
    holes: [[inches(20), inches(21), inches(3)]],
  });
  const field = fieldOf(one.plan, one.wall, one.lay, SIXTEENTH);

  it("never loses a better start, and tells each with the score of its pieces", () => {
    const walk = new Walk(1_000_000);
    walk.weighNamed(field);
    const named = walk.best;
    walk.searchJoint(startsAtJoint(field));
    const critical = walk.best;
    assert.ok(walk.searchAll(field));
    const scores = [named, critical, walk.best].map(({ x, y, score }) => {
      assert.deepEqual(score, laidScore(one, SIXTEENTH, x, y));
      return score;
    });
    assert.ok(compareScores(scores[1]!, scores[0]!) <= 0);
    assert.ok(compareScores(scores[2]!, scores[1]!) <= 0);
  });

  it("stops when it has taken its looks, and has a start all the same", () => {
    const walk = new Walk(10);
    walk.weighNamed(field);
    walk.searchJoint(startsAtJoint(field));
    assert.ok(walk.isStopped);
    assert.ok(walk.best.score.tiles > 0);
  });
});
