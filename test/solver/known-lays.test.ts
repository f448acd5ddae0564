import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { KnownLays } from "../../src/solver/known-lays.js";
import type { PanelText } from "./free-wall-text.js";
import { foundFor, lonePanel } from "./lone-panel.js";

const IN = NM_PER.inch;

/** The dado's joint is left open, the field's is stated or not. */
const RANGE: PanelText = { joint: "1/8 to 1/4" };

/** A field over the dado that goes on, past a course of the dado, from its own first run. */
const GOES_ON: PanelText = {
  over: "courses 1, 1 of dado, 1 of field",
};

function known(parts: PanelText) {
  const panel = lonePanel(parts);
  return { ...panel, all: new KnownLays(panel.plan, panel.all), names: panel.all };
}

describe("what is known of a room's lays between its rounds", () => {
  it("is nothing before the first, and then what was found", () => {
    const { all, lone } = known({});
    assert.equal(all.foundOf(lone("dado")), null);
    assert.deepEqual(
      [all.isStanding(lone("dado")), all.isAcrossKnown(lone("dado"))],
      [false, false],
    );
    const found = foundFor(lone("dado"), IN / 8);
    all.settle(lone("dado"), found);
    assert.equal(all.foundOf(lone("dado")), found);
    assert.deepEqual([all.isStanding(lone("dado")), all.isAcrossKnown(lone("dado"))], [true, true]);
  });

  it("is where tiles stand across that is stated, and where courses do of which all is", () => {
    const { all, lone } = known({ dado: "across full tile from left" });
    assert.deepEqual([all.isStanding(lone("dado")), all.isAcrossKnown(lone("dado"))], [true, true]);
  });

  it("takes the narrowest joint until another is found", () => {
    const { all, lone } = known(RANGE);
    assert.equal(all.jointOf(lone("dado")), IN / 8);
    // Two courses of 6 in, a joint between them and one over them.
    assert.equal(all.standing(lone("field")).region.bounds.bottom, (12 + 1 / 4) * IN);
    all.settle(lone("dado"), foundFor(lone("dado"), IN / 4));
    assert.equal(all.jointOf(lone("dado")), IN / 4);
    assert.equal(all.standing(lone("field")).region.bounds.bottom, (12 + 1 / 2) * IN);
  });

  it("makes a lay ready once the joints are found that its place hangs from", () => {
    const { all, lone } = known(RANGE);
    assert.deepEqual([all.isReady(lone("dado")), all.isReady(lone("field"))], [true, false]);
    all.settle(lone("dado"), foundFor(lone("dado"), IN / 4));
    assert.equal(all.isReady(lone("field")), true);
  });

  it("makes a lay ready whose head joints go on from another's once those are found", () => {
    const { all, lone, names } = known(GOES_ON);
    const [, , , next] = names;
    assert.equal(next!.lay.goesOnFrom, "field");
    assert.deepEqual([all.isReady(next!), all.isAcrossKnown(next!)], [false, false]);
    all.settle(lone("field"), foundFor(lone("field"), IN / 8));
    assert.deepEqual([all.isReady(next!), all.isAcrossKnown(next!)], [true, true]);
  });

  it("settles a wall by what was found so far", () => {
    const { all, wall, lone } = known({});
    all.settle(lone("dado"), foundFor(lone("dado"), IN / 8));
    assert.deepEqual([...all.settled(wall).starts.keys()], ["dado"]);
  });
});
