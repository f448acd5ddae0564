import assert from "node:assert/strict";
import { findings, messages, type WallText } from "./wall-text.js";

const CODE = "joint/long-tile";

const long = (joint: string, tile: string, more: WallText = {}): WallText => ({
  face: "15 + nm x 4",
  size: "60 x 40",
  bond: "running 1/3",
  joint,
  tile,
  ...more,
});

// Quoted in fcimag.com/articles/96103 and in ctasc.com's head joint answer: at least 1/8 in with
// rectified tile, 3/16 in with calibrated, and the edge's warpage: 1/8 + 1/32 = 5/32 in.
describe("joint/long-tile", () => {
  it("tells a joint one nanometre under 1/8 or 3/16 in, and is silent at it", () => {
    assert.deepEqual(messages(long("1/8", "edges rectified"), CODE), []);
    assert.deepEqual(messages(long("1/8 - nm", "edges rectified"), CODE), [
      "the joint is 1/8- in; in a running bond of rectified tile 15+ in long, at least 1/8 in is wanted",
    ]);
    assert.deepEqual(messages(long("3/16", "edges pressed"), CODE), []);
    assert.deepEqual(messages(long("3/16 - nm", "edges pressed"), CODE), [
      "the joint is 3/16- in; in a running bond of pressed tile 15+ in long, at least 3/16 in is wanted",
    ]);
  });

  it("adds the edge's warpage: 1/8 and 1/32 are 5/32 in", () => {
    const tile = "edges rectified\nwarpage 1/32";
    assert.deepEqual(messages(long("5/32", tile), CODE), []);
    assert.deepEqual(messages(long("5/32 - nm", tile), CODE), [
      "the joint is 5/32- in; in a running bond of rectified tile 15+ in long, at least 5/32 in, 1/32 in of it " +
        "for its warpage, is wanted",
    ]);
  });

  it("holds tile whose edges the plan doesn't name to the lesser figure", () => {
    assert.deepEqual(messages(long("1/8", ""), CODE), []);
    assert.match(messages(long("1/8 - nm", ""), CODE)[0]!, /a running bond of tile 15\+ in long/);
  });

  it("is silent about a stack bond, and about sides of 15 in and less", () => {
    assert.deepEqual(messages(long("1/16", "", { bond: "stack" }), CODE), []);
    assert.deepEqual(messages(long("1/16", "", { face: "15 x 4" }), CODE), []);
    assert.equal(messages(long("1/16", "", { face: "4 x 15 + nm" }), CODE).length, 1);
  });

  it("speaks at the joint's statement, as an error, with its source", () => {
    const [found] = findings(long("1/16", ""), CODE);
    assert.equal(found!.severity, "error");
    assert.match(found!.source!, /fcimag\.com\/articles\/96103/);
  });

  it("follows the plan's own limit, which leaves the warpage standing, and is silent when that is off", () => {
    const rules = (text: string, joint: string): string[] =>
      messages(long(joint, "warpage 1/32", { plan: `rules {\n ${text}\n}` }), CODE);
    assert.deepEqual(rules("long 1/16", "3/32"), []);
    assert.equal(rules("long 1/16", "3/32 - nm").length, 1);
    assert.deepEqual(rules("long off", "1/32"), []);
  });

  it("is silenced by an allow in the lay", () => {
    const lay = 'allow joint/long-tile "each one laid by eye"';
    assert.equal(findings(long("1/16", "", { lay }), CODE)[0]!.allowed, "each one laid by eye");
  });
});
