import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

const CODE = "joint/too-narrow";

describe("joint/too-narrow", () => {
  it("tells a joint one nanometre under three times the variation, and is silent at it", () => {
    const lot = { tile: "variation 1/16" };
    assert.deepEqual(messages({ ...lot, joint: "3/16 - nm" }, CODE), [
      "the joint is 3/16- in; at least 3/16 in, 3 x the 1/16 in by which the tile varies, is wanted",
    ]);
    assert.deepEqual(messages({ ...lot, joint: "3/16" }, CODE), []);
  });

  it("tells a joint one nanometre under 1/16 in, whatever the variation", () => {
    assert.deepEqual(messages({ joint: "1/16 - nm" }, CODE), [
      "the joint is 1/16- in; at least 1/16 in is wanted",
    ]);
    assert.deepEqual(messages({ joint: "1/16", tile: "variation 1/64" }, CODE), []);
  });

  it("judges the joint that is chosen from a range", () => {
    assert.equal(messages({ joint: "1/32 to 1/16 - nm" }, CODE).length, 1);
  });

  it("speaks at the joint's statement, as an error, with its source", () => {
    const [found] = findings({ joint: "1/32" }, CODE);
    assert.equal(found!.severity, "error");
    assert.match(found!.source!, /ANSI A108\.02 4\.3\.8/);
    assert.equal(found!.range.end.line, found!.range.start.line);
  });

  it("follows the plan's own limit, which leaves three times the variation standing", () => {
    const wide = { plan: "rules {\n joint 3/16\n}" };
    assert.equal(messages({ ...wide, joint: "3/16 - nm" }, CODE).length, 1);
    assert.equal(messages({ ...wide, joint: "3/16" }, CODE).length, 0);
    assert.equal(messages({ ...wide, joint: "3/16", tile: "variation 1/8" }, CODE).length, 1);
    assert.equal(messages({ joint: "1/32", plan: "rules {\n joint off\n}" }, CODE).length, 0);
  });

  it("is silenced by an allow in the lay", () => {
    const lay = 'allow joint/too-narrow "rectified, sorted by hand"';
    assert.equal(findings({ joint: "1/32", lay }, CODE)[0]!.allowed, "rectified, sorted by hand");
  });
});
