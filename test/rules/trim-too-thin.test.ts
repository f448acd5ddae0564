import assert from "node:assert/strict";
import { findings, wallText, type WallText } from "./wall-text.js";

const CODE = "trim/too-thin";
const EDGE = "left free trim nose\nright free\nbottom free\ntop free";

/** A plan whose trim is so thick, beside tile of 5/16 in. */
const thick = (trim: string, parts: WallText = { edges: EDGE }): string =>
  wallText(parts).replace(/(trim nose[^}]*thickness )5\/16/, `$1${trim}`);
const told = (text: string): string[] => findings(text, CODE).map(({ message }) => message);

// That tile and trim are to be flush is common practice; how far one edge may stand proud of the
// next: ANSI A108.02 4.3.7, quoted in constructionspecifier.com tile and stone lippage.
describe("trim/too-thin", () => {
  it("tells trim one nanometre more than 1/32 in thinner than the tile, and is silent at it", () => {
    assert.deepEqual(told(thick("9/32")), []);
    assert.deepEqual(told(thick("9/32 - nm")), [
      "tile field stands 1/32+ in proud of trim nose at the left, and its edge shows; at most 1/32 in is wanted",
    ]);
  });

  it("lets joints of 1/4 in and more have 1/16 in", () => {
    const wide = { edges: EDGE, joint: "1/4" };
    assert.deepEqual(told(thick("1/4", wide)), []);
    assert.equal(told(thick("1/4 - nm", wide)).length, 1);
    assert.equal(told(thick("1/4", { ...wide, joint: "1/4 - nm" })).length, 1);
  });

  it("is silent about trim that stands proud, as a liner does", () => {
    assert.deepEqual(told(thick("1/2")), []);
  });

  it("speaks of a frame at the frame, and is silenced by an allow in the opening", () => {
    const wall = (more: string): WallText => ({
      size: "48 x 36",
      wall: `window sash {\n at 19, 12\n size 10 x 8\n frame nose mitre\n movement 1/8\n ${more}\n}`,
    });
    assert.match(told(thick("1/8", wall("")))[0]!, /proud of trim nose round window sash/);
    const [found] = findings(thick("1/8", wall('allow trim/too-thin "a profile"')), CODE);
    assert.equal(found!.allowed, "a profile");
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    const rules = (text: string): string =>
      thick("1/4", { edges: EDGE, plan: `rules {\n ${text}\n}` });
    assert.deepEqual(told(rules("proud 1/16")), []);
    assert.equal(told(rules("proud 1/16 - nm")).length, 1);
    assert.deepEqual(told(rules("proud off")), []);
  });
});
