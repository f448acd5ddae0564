import assert from "node:assert/strict";
import { findings, messages, type WallText } from "./wall-text.js";

const CODE = "lippage/expected";

const bowed = (warpage: string, bond = "running 1/2", more: WallText = {}): WallText => ({
  face: "12 x 4",
  size: "60 x 40",
  bond,
  tile: `warpage ${warpage}`,
  ...more,
});

// ANSI A108.02 4.3.7, quoted in constructionspecifier.com tile and stone lippage: 1/32 in with joints
// under 1/4 in, 1/16 in from there on, besides the actual warpage. The arc is common practice.
describe("lippage/expected", () => {
  it("tells a bow of one nanometre over 1/32 in at half an offset, and is silent at it", () => {
    assert.deepEqual(messages(bowed("1/32"), CODE), []);
    assert.deepEqual(messages(bowed("1/32 + nm"), CODE), [
      "a bow of 1/32+ in makes edges stand 1/32+ in proud at this offset before any fault of setting; at most " +
        "1/32 in is wanted, by flatter tile, a smaller offset or a joint of 1/4 in",
    ]);
  });

  it("takes eight ninths of the bow at a third, either way round, and three quarters at a quarter", () => {
    for (const bond of ["running 1/3", "running 2/3"]) {
      assert.deepEqual(messages(bowed("9/8 * 1/32", bond), CODE), []);
      assert.equal(messages(bowed("9/8 * 1/32 + 0.00001mm", bond), CODE).length, 1);
    }
    assert.deepEqual(messages(bowed("4/3 * 1/32", "running 1/4"), CODE), []);
    assert.equal(messages(bowed("4/3 * 1/32 + 0.00001mm", "running 1/4"), CODE).length, 1);
  });

  it("lets joints of 1/4 in and more show 1/16 in", () => {
    assert.deepEqual(messages(bowed("1/16", "running 1/2", { joint: "1/4" }), CODE), []);
    assert.equal(messages(bowed("1/16", "running 1/2", { joint: "1/4 - nm" }), CODE).length, 1);
  });

  it("is silent about a stack bond, whose ends meet ends, and about tile that stands upright", () => {
    assert.deepEqual(messages(bowed("1/8", "stack"), CODE), []);
    assert.deepEqual(messages(bowed("1/8", "running 1/2", { face: "4 x 12" }), CODE), []);
    assert.deepEqual(messages({ size: "60 x 40", bond: "running 1/2" }, CODE), []);
  });

  it("speaks at the lay, as information: the standard adds the warpage to what it allows", () => {
    const [found] = findings(bowed("1/16"), CODE);
    assert.equal(found!.severity, "information");
    assert.match(found!.source!, /ANSI A108\.02 4\.3\.7/);
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    const rules = (text: string): string[] =>
      messages(bowed("1/16", "running 1/2", { plan: `rules {\n ${text}\n}` }), CODE);
    assert.deepEqual(rules("lippage 1/16"), []);
    assert.equal(rules("lippage 1/16 - nm").length, 1);
    assert.deepEqual(rules("lippage off"), []);
  });
});
