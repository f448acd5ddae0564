import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

const CODE = "joint/trim-clash";
/**
 * A window in the middle of a wall 48 in wide, its frame 14 in long under it: one trim of 6 in in the
 * middle, joints of 1/8 in with their middles 3 1/16 in from the centre. The field's joints are set by
 * the place of one; the next are 6 1/8 in off, like the frame's.
 */
const under = (joint: string, more = "") => ({
  size: "48 x 36",
  wall: `window sash {\n at 19, 12\n size 10 x 2\n frame nose mitre\n movement 1/8\n ${more}\n}`,
  start: `across joint centred at ${joint}\nup full course under sash`,
});
const inLine = "20 15/16";

describe("joint/trim-clash", () => {
  it("is silent where the frame's joints are in line with the field's", () => {
    assert.deepEqual(messages(under(inLine), CODE), []);
  });

  it("tells joints one nanometre nearer than 1/2 in, and is silent at it", () => {
    // Joints of 1/8 in, 1/2 in clear of each other: 5/8 in from middle to middle.
    const told = messages(under(`${inLine} + 5/8 - nm`), CODE);
    assert.deepEqual(told, [
      "2 joints at the bottom of the frame of window sash stand 1/2- in off a field joint; " +
        "in line with it, or at least 1/2 in clear of it, is wanted",
      "2 joints at the top of the frame of window sash stand 1/2- in off a field joint; " +
        "in line with it, or at least 1/2 in clear of it, is wanted",
    ]);
    assert.deepEqual(messages(under(`${inLine} + 5/8`), CODE), []);
    assert.deepEqual(messages(under(`${inLine} - 5/8`), CODE), []);
  });

  it("tells joints that touch or overlap a field joint without being in line", () => {
    assert.match(messages(under(`${inLine} + 1/16`), CODE)[0]!, /stand 0 in off a field joint/);
    assert.match(messages(under(`${inLine} + nm + nm`), CODE)[0]!, /stand 0 in off/);
  });

  it("holds the joints of a jamb against the bed joints", () => {
    const tall = (y: string) => ({
      face: "6 x 6",
      size: "48 x 48",
      wall: "window sash {\n at 20, 16\n size 2 x 10\n frame nose mitre\n movement 1/8\n}",
      start: `across tile centred on wall\nup joint at ${y}`,
    });
    // The jambs are 14 in long from 14 in up: their joints' middles stand at 17 15/16 and 24 1/16 in.
    assert.deepEqual(messages(tall("17 15/16"), CODE), []);
    assert.match(messages(tall("17 15/16 + 1/4"), CODE).join(), /at the left of .*at the right of/);
  });

  it("speaks at the frame, as a warning", () => {
    const [found] = findings(under(`${inLine} + 1/4`), CODE);
    assert.equal(found!.severity, "warning");
    assert.equal(found!.source, "common practice");
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    const near = under(`${inLine} + 3/8`);
    assert.equal(messages({ ...near, plan: "rules {\n clear 1/4\n}" }, CODE).length, 0);
    assert.equal(messages({ ...near, plan: "rules {\n clear 1/4 + nm\n}" }, CODE).length, 2);
    assert.equal(messages({ ...near, plan: "rules {\n clear off\n}" }, CODE).length, 0);
  });

  it("is silenced by an allow in the opening", () => {
    const allow = 'allow joint/trim-clash "the owner likes it"';
    assert.equal(findings(under(`${inLine} + 1/4`, allow), CODE)[0]!.allowed, "the owner likes it");
  });
});
