import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

const CODE = "cut/thin-leg";
/** A window whose lower left corner notches the tile from 6 1/8 to 12 1/8 in, by its soft joint of 1/8 in. */
const window = (x: string, y: string, allow = "") => ({
  size: "42 3/4 x 31 1/8",
  wall: `window sash {\n at ${x}, ${y}\n size 12 x 12\n movement 1/8\n ${allow}\n}`,
});

describe("cut/thin-leg", () => {
  it("tells an upright leg one nanometre under the sliver limit, and is silent at it", () => {
    assert.deepEqual(messages(window("8 1/4 - nm", "4 3/4"), CODE), [
      "2 pieces keep a leg 2- in wide left of window sash; at least 2 in is wanted",
    ]);
    assert.deepEqual(messages(window("8 1/4", "4 3/4"), CODE), []);
  });

  it("tells a lying leg by the tile's height", () => {
    assert.deepEqual(messages(window("8 1/4", "4 1/4 - nm"), CODE), [
      "2 pieces keep a leg 1- in high under window sash; at least 1 in is wanted",
    ]);
    assert.deepEqual(messages(window("8 1/4", "4 1/4"), CODE), []);
  });

  it("speaks at the opening", () => {
    const [found] = findings(window("7", "4 3/4"), CODE);
    assert.equal(found!.severity, "warning");
    assert.deepEqual(found!.pieces, ["back/2/2", "back/6/2"]);
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    const narrow = window("7 1/4", "4 3/4");
    assert.equal(messages({ ...narrow, plan: "rules {\n leg 1\n}" }, CODE).length, 0);
    assert.equal(messages({ ...narrow, plan: "rules {\n leg 1 + nm\n}" }, CODE).length, 1);
    assert.equal(messages({ ...narrow, plan: "rules {\n leg off\n}" }, CODE).length, 0);
    assert.equal(messages({ ...narrow, plan: "rules {\n sliver off\n}" }, CODE).length, 1);
  });

  it("is silenced by an allow in the opening", () => {
    const allow = 'allow cut/thin-leg "cut from two pieces"';
    assert.equal(findings(window("7", "4 3/4", allow), CODE)[0]!.allowed, "cut from two pieces");
  });
});
