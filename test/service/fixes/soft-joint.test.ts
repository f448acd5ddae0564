import assert from "node:assert/strict";
import { wallPlan } from "../plans.js";
import { mend } from "./mending.js";

const START = "    joint 1/16\n    across tile centred on wall\n    up full course from bottom\n";
const PLAN = wallPlan(START);
const sash = (movement: string): string =>
  wallPlan(
    START,
    `  size 60 x 48\n  window sash {\n    at 18, 20\n    size 24 x 12\n${movement}  }\n`,
  );

describe("a soft joint", () => {
  it("is added where an edge has none", () => {
    const text = PLAN.replace("top ceiling movement 1/8", "top ceiling");
    const mended = mend(text, "movement/missing", /Add/);
    assert.ok(mended.text.includes("top ceiling movement 1/8\n"));
    assert.ok(!mended.codes.includes("movement/missing"));
  });

  it("takes the place of a hard one", () => {
    const text = PLAN.replace("left wall movement 1/8", "left wall joint 1/16");
    const mended = mend(text, "movement/missing", /Add/);
    assert.ok(mended.text.includes("left wall movement 1/8\n"));
    assert.ok(!mended.codes.includes("movement/missing"));
  });

  it("is widened where it is too narrow, readings kept", () => {
    const text = PLAN.replace("right wall movement 1/8", "right wall movement 1/16 measured 0: 0");
    const mended = mend(text, "movement/narrow", /Widen/);
    assert.ok(mended.text.includes("right wall movement 1/8 measured 0: 0\n"));
    assert.ok(!mended.codes.includes("movement/narrow"));
  });

  it("is added and widened round an opening", () => {
    const added = mend(sash(""), "movement/missing", /Add/);
    assert.ok(added.text.includes("    movement 1/8\n"));
    assert.ok(!added.codes.includes("movement/missing"));
    const widened = mend(sash("    movement 1/16\n"), "movement/narrow", /Widen/);
    assert.ok(!widened.codes.includes("movement/narrow"));
  });

  it("has the width that the plan's own limit asks for", () => {
    const text = `rules { movement 1/4 }\n${PLAN.replace("top ceiling movement 1/8", "top ceiling")}`;
    assert.ok(mend(text, "movement/missing", /Add/).text.includes("top ceiling movement 1/4\n"));
  });

  it("is widened between lays", () => {
    const lay = `${START}    covers bottom to 20\n    between movement 1/16\n  }\n  lay pressed {\n    bond stack\n${START}`;
    const mended = mend(wallPlan(lay), "movement/narrow", /Widen the movement joint to 1\/8 in/);
    assert.ok(mended.text.includes("    between movement 1/8\n"));
    assert.ok(!mended.codes.includes("movement/narrow"));
  });
});
