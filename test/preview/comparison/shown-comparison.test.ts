import assert from "node:assert/strict";
import { noteOf, withComparison } from "../../../src/preview/comparison/shown-comparison.js";
import { comparisonOf, MOVED } from "../support/show-comparison.js";
import { TWO_WALLS } from "../support/show-plan.js";

const LOOK = { way: "sides", wall: null } as const;
const WHOLE = comparisonOf(LOOK);
const BROKEN = comparisonOf(LOOK, TWO_WALLS, MOVED.replace("size 60 x 48", "size 60 x"), 2);

describe("the comparison that is shown", () => {
  it("is the newest that is whole, else the first that came", () => {
    assert.equal(withComparison(WHOLE, BROKEN), WHOLE);
    assert.equal(withComparison(null, BROKEN), BROKEN);
    assert.equal(withComparison(BROKEN, WHOLE), WHOLE);
  });

  it("says which text is broken, and that a wall is too large", () => {
    assert.equal(noteOf(null), null);
    assert.equal(noteOf(WHOLE), null);
    assert.match(noteOf(BROKEN)!, /^Part of the text could not/);
    assert.match(noteOf({ ...WHOLE, oldWhole: false })!, /^Part of the text before could not/);
    assert.match(noteOf({ ...WHOLE, picture: null })!, /too large/);
  });
});
