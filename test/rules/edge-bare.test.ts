import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

const CODE = "edge/bare";

describe("edge/bare", () => {
  it("tells tile that is cut by one nanometre at a free side, and is silent at whole tile", () => {
    assert.deepEqual(messages({ size: "24 3/8 - nm x 6 1/8" }, CODE), [
      "2 pieces show cut edges at the free right; trim, or the tile's own edge, is wanted there",
    ]);
    assert.deepEqual(messages({ size: "24 3/8 x 6 1/8" }, CODE), []);
  });

  it("tells each free side at its own statement", () => {
    const found = findings({ size: "24 x 6" }, CODE);
    assert.deepEqual(
      found.map(({ message }) => /free (\w+)/.exec(message)![1]),
      ["right", "top"],
    );
    assert.notEqual(found[0]!.range.start.line, found[1]!.range.start.line);
    assert.equal(found[0]!.severity, "warning");
    assert.deepEqual(found[0]!.pieces, ["back/1/4", "back/2/4"]);
  });

  it("tells a scribed edge", () => {
    const edges = "left free\nright free\nbottom free measured 0: 0, 6: nm\ntop free";
    assert.match(messages({ edges }, CODE).join(), /at the free bottom/);
  });

  it("is silent with trim, and where the side meets something", () => {
    const right = (edge: string) => `left free\nright ${edge}\nbottom free\ntop free`;
    assert.deepEqual(messages({ size: "23 x 6 1/8", edges: right("free trim nose") }, CODE), []);
    assert.deepEqual(messages({ size: "23 x 6 1/8", edges: right("wall movement 1/8") }, CODE), []);
  });

  it("is silent about cuts at an opening", () => {
    const wall = "window sash {\n at 7, 4\n size 4 x 4\n movement 1/8\n}";
    assert.deepEqual(messages({ wall, size: "24 3/8 x 12 3/8" }, CODE), []);
  });

  it("is silent when the plan turns it off or allows it", () => {
    assert.deepEqual(messages({ size: "24 x 6 1/8", plan: "rules {\n bare off\n}" }, CODE), []);
    const wall = 'allow edge/bare "polished on site"';
    assert.equal(findings({ size: "24 x 6 1/8", wall }, CODE)[0]!.allowed, "polished on site");
  });
});
