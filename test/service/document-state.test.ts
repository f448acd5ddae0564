import assert from "node:assert/strict";
import { DocumentState, DocumentStates } from "../../src/service/document-state.js";
import { Plans, STOCK_FILE, wallPlan } from "./plans.js";

describe("the state of a document", () => {
  it("is worked out once", () => {
    const plans = new Plans();
    const state = new DocumentState(plans.open(wallPlan("    joint 1/16\n")), plans);
    assert.equal(state.tree, state.tree);
    assert.equal(state.outcome, state.outcome);
  });

  it("is worked out again once a used file has changed, its tree not", () => {
    const plans = new Plans();
    const state = new DocumentState(plans.open('use "stock.tileplan"\n'), plans);
    const { outcome, tree } = state;
    assert.deepEqual(state.usedFiles, [STOCK_FILE]);
    plans.texts.delete(STOCK_FILE);
    assert.notEqual(state.outcome, outcome);
    assert.equal(state.tree, tree);
  });

  it("names no used files before it was solved", () => {
    const plans = new Plans();
    assert.deepEqual(new DocumentState(plans.open('use "a.tileplan"\n'), plans).usedFiles, []);
  });

  it("is one for each version", () => {
    const plans = new Plans();
    const states = new DocumentStates(plans);
    const [first, second] = [plans.open("bed 1\n"), plans.open("bed 1\n")];
    assert.equal(states.of(first), states.of(first));
    assert.notEqual(states.of(first), states.of(second));
  });

  it("shares the walls that didn't change with the version before it, solved or not", () => {
    const plans = new Plans();
    const states = new DocumentStates(plans);
    const piecesOf = (text: string) => {
      const { walls } = states.of(plans.open(text)).outcome.solved;
      return walls[0]!.lays[0]!.pieces;
    };
    const text = wallPlan("    joint 1/16\n");
    const pieces = piecesOf(text);
    states.of(plans.open(`# not asked for\n${text}`));
    assert.equal(piecesOf(`# moved\n${text}`), pieces);
    assert.notEqual(piecesOf(wallPlan("    joint 1/8\n")), pieces);
  });
});
