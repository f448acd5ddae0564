import assert from "node:assert/strict";
import { DocumentState } from "../../../src/service/document-state.js";
import { statementAtHead } from "../../../src/service/fixes/statement-at-head.js";
import { Plans } from "../plans.js";

describe("the statement that a diagnostic underlines", () => {
  it("is found by its name or its keyword, and by nothing beside them", () => {
    const plans = new Plans();
    const state = new DocumentState(plans.open("wall a {\n  left pan\n}\n"), plans);
    const at = (line: number, start: number, end: number) =>
      statementAtHead(state, { start: { line, character: start }, end: { line, character: end } });
    assert.equal(at(0, 5, 6)?.kind, "wall");
    assert.equal(at(1, 2, 6)?.kind, "edge");
    assert.equal(at(1, 2, 5), null);
  });
});
