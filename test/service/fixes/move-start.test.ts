import assert from "node:assert/strict";
import { codesOf, mend, mendsOf } from "./mending.js";
import { wallPlan } from "../plans.js";

const plan = (across: string, up = "full course from bottom"): string =>
  wallPlan(`    joint 1/16\n    across ${across}\n    up ${up}\n`, "  size 60 x 47 3/16\n");

describe("a start that leaves a sliver", () => {
  it("moves across to the nearest one that leaves none", () => {
    const text = plan("tile centred at 3 3/4");
    const { text: moved, codes, fix } = mend(text, "cut/sliver", /nearest start.*across/);
    assert.ok(!codes.includes("cut/sliver"), moved);
    assert.equal(fix.edits.length, 1);
  });

  it("moves up, too", () => {
    const text = plan("tile centred on wall", "joint at 1/2");
    const { codes } = mend(text, "cut/sliver", /nearest start.*up/);
    assert.ok(!codes.includes("cut/sliver"));
  });

  it("is the nearest: a little less far there still is one", () => {
    const text = plan("tile centred at 3 3/4");
    const { text: moved } = mend(text, "cut/sliver", /nearest/);
    const place = Number(/across tile centred at ([\d.]+)mm/.exec(moved)?.[1] ?? NaN);
    if (Number.isNaN(place)) return;
    const inch = 25.4;
    const module = (5 + 15 / 16) * inch;
    const off = ((place - 3.75 * inch + module / 2) % module) - module / 2;
    const less = 3.75 * inch + off * 0.98;
    assert.ok(codesOf(plan(`tile centred at ${less.toFixed(6)}mm`)).includes("cut/sliver"));
  });

  it("is not offered where there is none, or where the solver has chosen", () => {
    // A wall narrower than the least piece has nothing but slivers.
    const slit = wallPlan(
      "    joint 1/16\n    across tile centred on wall\n    up full course from bottom\n",
      "  size 1 1/8 x 47 3/16\n",
    );
    assert.ok(codesOf(slit).includes("cut/sliver"));
    assert.deepEqual(
      mendsOf(slit, "cut/sliver").filter(({ title }) => title.includes("nearest")),
      [],
    );
    const chosen = wallPlan("    joint 1/16\n", "  size 1 1/8 x 47 3/16\n");
    assert.deepEqual(
      mendsOf(chosen, "cut/sliver").filter(({ title }) => title.includes("nearest")),
      [],
    );
  });
});
