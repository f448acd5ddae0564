import assert from "node:assert/strict";
import { changeLenses } from "../../src/service/change-lenses.js";
import { Compared } from "../../src/service/compared.js";
import type { ChangeLens } from "../../src/service/index.js";
import { AFTER, BEFORE, oldPlan } from "./comparing.js";
import { stateOf } from "./state-of.js";

function lenses(before: string, after: string): ChangeLens[] {
  return changeLenses(stateOf(after), oldPlan(before), new Compared());
}

describe("lenses over what changed", () => {
  it("stand over the walls that changed alone, and say what did", () => {
    const told = lenses(BEFORE, AFTER);
    assert.equal(told.length, 1);
    const { wall, range, text } = told[0]!;
    assert.equal(wall, "back");
    assert.equal(AFTER.split("\n")[range.start.line], 'wall back "Back wall" {');
    assert.match(text, /^\d+ cuts changed/);
  });

  it("are none where nothing changed but the text", () => {
    assert.deepEqual(lenses(BEFORE, `# a note\n${BEFORE}`), []);
  });

  it("are none while either text can't be understood whole", () => {
    const broken = BEFORE.replace("size 60 x", "size 60");
    assert.deepEqual(lenses(BEFORE, broken), []);
    assert.deepEqual(lenses(broken, AFTER), []);
  });
});
