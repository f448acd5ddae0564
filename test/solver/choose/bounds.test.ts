import assert from "node:assert/strict";
import { boundAcross, boundPair, boundUp } from "../../../src/solver/choose/bounds.js";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { scribedAcross, scribedUp, withScribed } from "../../../src/solver/choose/scribed.js";
import { compareBounds } from "../../../src/solver/choose/pairs-in-order.js";
import { lowestCourse } from "../../../src/solver/choose/weigh.js";
import { randomFrom } from "../../support/random.js";
import { laidScore } from "./laid-score.js";
import { oneWall, randomGiven, type Variety } from "./model-plan.js";

function at(place: number) {
  return { from: place, to: place };
}

function neverTooHigh(seeds: number, variety: Variety): number {
  let told = 0;
  for (let seed = 1; seed <= seeds; seed++) {
    const random = randomFrom(seed);
    const one = oneWall(randomGiven(random, variety));
    const { plan, wall, lay } = one;
    const field = fieldOf(plan, wall, lay, lay.joint.min);
    for (let n = 0; n < 8; n++) {
      const x = random.integer(0, field.across.module);
      const y = lowestCourse(field, random.integer(0, field.up.module));
      const score = laidScore(one, lay.joint.min, x, y);
      if (score.tiles === 0) continue;
      const across = boundAcross(field, x);
      const up = boundUp(field, y);
      const pair = boundPair(field, across, y, up);
      const text = JSON.stringify({ seed, x, y, score, across, up, pair });
      assert.ok(across.slivers + up.slivers <= score.slivers, text);
      const scribed = withScribed(
        withScribed(pair, scribedAcross(field, at(x))),
        scribedUp(field, at(y)),
      );
      assert.ok(compareBounds(scribed, score) <= 0, `${text} ${JSON.stringify(scribed)}`);
      assert.ok(across.underHalf + up.underHalf <= score.underHalf, text);
      assert.ok(pair.underHalf <= score.underHalf, text);
      assert.equal(pair.imbalance, score.imbalance, text);
      told += pair.slivers + pair.underHalf;
    }
  }
  return told;
}

describe("what a start costs at least", () => {
  const plain = { measured: false, openings: 0, holes: false, corners: true, most: 9 };

  it("is never more than it does cost", () => {
    assert.ok(neverTooHigh(250, plain) > 0);
  });

  it("is never more round openings and holes", () => {
    assert.ok(neverTooHigh(150, { ...plain, openings: 3, holes: true }) > 0);
  });

  it("is never more along measured sides", () => {
    assert.ok(neverTooHigh(80, { ...plain, openings: 1, measured: true }) > 0);
  });

  it("is never more along the slopes of an outline, where pieces are judged by their bounds", () => {
    const outlined = { ...plain, openings: 1, measured: true, outlined: true };
    assert.ok(neverTooHigh(150, outlined) > 0);
  });
});
