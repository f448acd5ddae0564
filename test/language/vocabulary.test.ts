import assert from "node:assert/strict";
import { INNER_WORDS, START, STATEMENTS } from "../../src/language/vocabulary.js";

describe("the vocabulary", () => {
  it("gives every statement's word its place", () => {
    const used = new Set(Object.values(STATEMENTS).flatMap((words) => [...words.values()]));
    used.add(START.limit);
    assert.deepEqual(new Set(Object.values(START)), used);
  });

  it("lets the same word begin statements of different blocks", () => {
    assert.equal(STATEMENTS.wall.get("size"), STATEMENTS.opening.get("size"));
    assert.equal(STATEMENTS.plan.get("allow"), STATEMENTS.lay.get("allow"));
  });

  it("has a word of its own inside a line for each that also begins one", () => {
    assert.notEqual(INNER_WORDS.get("movement"), START.movement.token);
  });
});
