import assert from "node:assert/strict";
import { offsetEdit, offsetText } from "../../../src/service/fixes/bond-offset.js";
import { statementsOf } from "../../../src/service/walk-tree.js";
import { edited, wallPlan } from "../plans.js";
import { stateOf } from "../state-of.js";

const THIRD = { p: 1, q: 3 };

/** The text with the first statement of a kind laid at a third; null where it can't be. */
function atThird(text: string, kind: "lay" | "lining" | "wall"): string | null {
  const state = stateOf(text);
  const placed = [...statementsOf(state.tree.statements)];
  const { statement } = placed.find((each) => each.statement.kind === kind)!;
  const edit = offsetEdit(state, statement, THIRD);
  return edit && edited(text, [edit]);
}

describe("the offset of a bond", () => {
  it("is said as a plan says it", () => {
    assert.equal(offsetText(THIRD), "1/3");
  });

  it("is written over a lay's own", () => {
    const text = wallPlan("    joint 1/8\n").replace("bond stack", "bond running 1/2");
    assert.equal(atThird(text, "lay"), text.replace("1/2", "1/3"));
  });

  it("is not written into a stack bond, nor into what is no lay", () => {
    const text = wallPlan("    joint 1/8\n");
    assert.deepEqual([atThird(text, "lay"), atThird(text, "wall")], [null, null]);
  });

  const niche = (lining: string) =>
    wallPlan("    joint 1/8\n", `  size 60 x 48\n  niche n {\n    ${lining}\n  }\n`);

  it("is written over a lining's own, or after its tile", () => {
    const wanted = niche("back pressed running 1/3 joint 1/8");
    assert.equal(atThird(niche("back pressed running 1/2 joint 1/8"), "lining"), wanted);
    assert.equal(atThird(niche("back pressed joint 1/8"), "lining"), wanted);
  });

  it("is not written into a lining that is stacked, or is of the sides too", () => {
    assert.equal(atThird(niche("back pressed stack"), "lining"), null);
    assert.equal(atThird(niche("inside pressed"), "lining"), null);
  });
});
