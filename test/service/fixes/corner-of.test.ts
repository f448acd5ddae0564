import assert from "node:assert/strict";
import { DocumentState } from "../../../src/service/document-state.js";
import { cornerOf } from "../../../src/service/fixes/corner-of.js";
import { Plans } from "../plans.js";
import { cornerPlan } from "./corner-plan.js";

describe("the corner of a finding", () => {
  const plans = new Plans();
  const text = cornerPlan("    up joint at line\n", "    up joint at 31\n");
  const state = new DocumentState(plans.open(text), plans);

  it("is the one at whose statement it speaks", () => {
    const miss = state.outcome.diagnostics.find(({ code }) => code === "corner/courses-miss")!;
    assert.equal(cornerOf(state, miss)!.under.wall.wall.name, "back");
  });

  it("is none for a finding of something else", () => {
    const other = state.outcome.diagnostics.find(({ code }) => code === "corner/courses-miss")!;
    assert.equal(cornerOf(state, { ...other, wall: "back" }), null);
  });
});
