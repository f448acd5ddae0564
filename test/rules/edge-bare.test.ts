import assert from "node:assert/strict";
import { check } from "../../src/rules/index.js";
import { solveClean } from "../support/solve-text.js";
import { findings, messages, wallText } from "./wall-text.js";

const CODE = "edge/bare";

/** The pieces that are told of a wall with an outline, finding by finding. */
const found = (outline: string, edges = "left free\nright free\ntop free") => {
  const text = wallText({ edges: `outline ${outline}\n${edges}\nbottom free` });
  const { solved } = solveClean(text.replace(/^ *size .*$/m, ""));
  return check(solved)
    .filter(({ code }) => code === CODE)
    .map(({ pieces }) => pieces);
};

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

  it("tells the steps and slopes of an outline with the side that they belong to", () => {
    const [right, top] = found("0, 0 to 24, 0 to 24, 6 to 18, 6 to 18, 8 to 12, 14 to 0, 14");
    // The riser at 18 cuts the third tile of course 3, and stands in the corner of that of course 2.
    assert.deepEqual(right, ["back/1/4", "back/2/3", "back/2/4", "back/3/3"]);
    // The tread at 6 cuts course 2, and so does the slope from 8 to 14 what reaches it.
    assert.ok(["back/2/3", "back/2/4", "back/3/3", "back/4/3"].every((id) => top!.includes(id)));
    assert.ok(["back/1/4", "back/2/2", "back/3/2", "back/4/1"].every((id) => !top!.includes(id)));
  });

  it("tells the riser at which a slope ends with the side that it faces", () => {
    const outline = "0, 0 to 24, 0 to 24, 14 to 14, 14 to 14, 8 to 0, 14";
    const [left, , top] = found(outline);
    // It stands in the third tile of courses 2 to 5; the slope ends in course 3.
    assert.deepEqual(left, ["back/3/3", "back/4/3", "back/5/3"]);
    assert.ok(top!.includes("back/3/3") && !top!.includes("back/4/3"));
    const [right, ...more] = found(outline, "left wall movement 0\nright free\ntop free");
    assert.ok(!right!.includes("back/4/3") && more.length === 1);
  });

  it("is silent along steps that stand in joints, or meet something", () => {
    assert.deepEqual(
      found("0, 0 to 24 3/8, 0 to 24 3/8, 6 1/8 to 18 1/4, 6 1/8 to 18 1/4, 15 1/2 to 0, 15 1/2"),
      [],
    );
    const outline = "0, 0 to 24 3/8, 0 to 24 3/8, 6 to 18, 6 to 18, 15 1/2 to 0, 15 1/2";
    assert.deepEqual(
      found(outline, "left free\nright wall movement 0\ntop ceiling movement 0"),
      [],
    );
  });

  it("tells a tile that is notched round a step at both its sides", () => {
    const [right, top] = found(
      "0, 0 to 24 3/8, 0 to 24 3/8, 5 to 15, 5 to 15, 15 1/2 to 0, 15 1/2",
    );
    assert.ok(right!.includes("back/2/3") && top!.includes("back/2/3"));
  });

  it("is silent when the plan turns it off or allows it", () => {
    assert.deepEqual(messages({ size: "24 x 6 1/8", plan: "rules {\n bare off\n}" }, CODE), []);
    const wall = 'allow edge/bare "polished on site"';
    assert.equal(findings({ size: "24 x 6 1/8", wall }, CODE)[0]!.allowed, "polished on site");
  });
});
