import assert from "node:assert/strict";
import { findings, messages, type WallText } from "./wall-text.js";

const CODE = "opening/off-centre";

/** A window whose middle is so far right of the middle of a wall 48 in wide. */
const off = (by: string, more: WallText = {}): WallText => ({
  size: "48 x 36",
  wall: `window sash {\n at 19 + ${by}, 12\n size 10 x 8\n movement 1/8\n}`,
  start: "across tile centred on wall\nup full course from bottom",
  ...more,
});

// ANSI A108.02 4.3.1 (centre and balance), quoted in floortrendsmag.com/articles/100744; how much the
// cuts may differ, and what is nearly: common practice.
describe("opening/off-centre", () => {
  it("tells a window whose side cuts differ by one nanometre over 1/8 in, and is silent at it", () => {
    assert.deepEqual(messages(off("1/16"), CODE), []);
    assert.deepEqual(messages(off("1/16 + nm"), CODE), [
      "the middle of window sash is 1/16+ in right of the line that the lay is centred on, and the cuts " +
        "beside it differ by 1/8+ in; at most 1/8 in, or a lay centred on sash, is wanted",
    ]);
    assert.match(messages(off("-1/4"), CODE)[0]!, /is 1\/4 in left of the line/);
  });

  it("is silent about one that is farther off than 1/2 in: it isn't meant to be there", () => {
    assert.equal(messages(off("1/2"), CODE).length, 1);
    assert.deepEqual(messages(off("1/2 + nm"), CODE), []);
  });

  it("is silent where the lay is centred on the opening, or on nothing", () => {
    const start = (across: string): string => `across ${across}\nup full course from bottom`;
    assert.deepEqual(messages(off("1/4", { start: start("tile centred on sash") }), CODE), []);
    assert.deepEqual(messages(off("1/4", { start: start("full tile from left") }), CODE), []);
    assert.equal(messages(off("1/4", { start: start("joint centred at 24") }), CODE).length, 1);
  });

  it("speaks at the opening, as information", () => {
    const [found] = findings(off("1/4"), CODE);
    assert.equal(found!.severity, "information");
    assert.match(found!.source!, /ANSI A108\.02 4\.3\.1/);
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    const rules = (text: string): WallText => off("1/4", { plan: `rules {\n ${text}\n}` });
    assert.equal(messages(rules("centre 1/4"), CODE).length, 1);
    assert.deepEqual(messages(rules("centre 1/4 - nm"), CODE), []);
    assert.deepEqual(messages(rules("centre off"), CODE), []);
  });
});
