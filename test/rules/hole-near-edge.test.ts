import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

const CODE = "hole/near-edge";
/** A hole of 1 1/2 in in the lower left tile, 3/4 in from its bottom and top. */
const hole = (x: string, y = "1 1/2") => ({ wall: `hole valve at ${x}, ${y} across 1 1/2` });

describe("hole/near-edge", () => {
  it("tells a rim one nanometre nearer than 1/2 in to the tile's edge, and is silent at it", () => {
    assert.deepEqual(messages(hole("1 1/4 - nm"), CODE), [
      "hole valve leaves 1/2- in to the edge of 1 piece; at least 1/2 in is wanted",
    ]);
    assert.deepEqual(messages(hole("1 1/4"), CODE), []);
    assert.equal(messages(hole("4 3/4 + nm"), CODE).length, 1);
    assert.equal(messages(hole("3", "1 1/4 - nm"), CODE).length, 1);
    assert.equal(messages(hole("3", "1 3/4 + nm"), CODE).length, 1);
  });

  it("is silent where the hole crosses a joint, but for the edges that it stays short of", () => {
    assert.deepEqual(messages(hole("6 1/16"), CODE), []);
    assert.deepEqual(messages(hole("6 1/16", "1"), CODE), [
      "hole valve leaves 1/4 in to the edge of 2 pieces; at least 1/2 in is wanted",
    ]);
  });

  it("measures to a cut and scribed edge", () => {
    const edges = "left free\nright free\nbottom pan measured 0: 0, 6: 1/2 movement 1/8\ntop free";
    const text = { edges, wall: "hole valve at 3, 2 across 1 1/2" };
    assert.equal(messages(text, CODE).length, 1);
  });

  it("speaks at the hole, as a warning", () => {
    const [found] = findings(hole("1"), CODE);
    assert.equal(found!.severity, "warning");
    assert.deepEqual(found!.pieces, ["back/1/1"]);
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    assert.equal(messages({ ...hole("1"), plan: "rules {\n hole 1/4\n}" }, CODE).length, 0);
    assert.equal(messages({ ...hole("1 - nm"), plan: "rules {\n hole 1/4\n}" }, CODE).length, 1);
    assert.equal(messages({ ...hole("1"), plan: "rules {\n hole off\n}" }, CODE).length, 0);
  });

  it("is silenced by an allow in the wall", () => {
    const { wall } = hole("1");
    const allowed = { wall: `${wall}\nallow hole/near-edge "under the plate"` };
    assert.equal(findings(allowed, CODE)[0]!.allowed, "under the plate");
  });
});
