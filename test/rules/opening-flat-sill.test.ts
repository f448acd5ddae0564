import assert from "node:assert/strict";
import { inPan, overEdge } from "./in-pan.js";
import { findings, messages, type WallText } from "./wall-text.js";

const CODE = "opening/flat-sill";

// fcimag.com/articles/93759; ANSI A108.01 3.6.4: 1/4 in per ft.
describe("opening/flat-sill", () => {
  it("tells a fall of one nanometre under 1/4 in over a depth of 12 in, and is silent at it", () => {
    assert.deepEqual(messages(inPan("depth 12\n fall 1/4"), CODE), []);
    assert.deepEqual(messages(inPan("depth 12\n fall 1/4 - nm"), CODE), [
      "the sill of niche soap falls 1/4- in; at least 1/48 of its depth of 12 in, so 1/4 in, " +
        "towards the room is wanted",
    ]);
    assert.match(
      messages(inPan("depth 12\n fall 0"), CODE)[0]!,
      /^the sill of niche soap is flat;/,
    );
  });

  it("asks for a fall that the plan doesn't state, as information", () => {
    const [found, ...others] = findings(inPan("depth 3 1/2"), CODE);
    assert.deepEqual(others, []);
    assert.equal(found!.severity, "information");
    // 3 1/2 in / 48 = 0.0729 in, so the next 1/32 in is 3/32 in.
    assert.equal(
      found!.message,
      "the plan doesn't say how the sill of niche soap falls; at least 1/48 of its depth of 3 1/2 in, " +
        "so 3/32 in, towards the room is wanted",
    );
  });

  it("leaves a slope back into the wall to its own rule", () => {
    assert.deepEqual(messages(inPan("depth 3 1/2\n fall -nm"), CODE), []);
    assert.equal(findings(inPan("depth 3 1/2\n fall 0"), CODE)[0]!.severity, "warning");
  });

  it("speaks of a window's sill, and of the top of a bench or a curb", () => {
    const told = (kind: string) => messages(inPan("depth 12\n fall 0", kind), CODE)[0]!;
    assert.match(told("window"), /^the sill of window soap is flat/);
    assert.match(told("bench"), /^the top of bench soap is flat/);
    assert.match(told("curb"), /^the top of curb soap is flat/);
  });

  it("is silent without a depth, and where the wall's bottom meets neither pan nor tub", () => {
    assert.deepEqual(messages(inPan(""), CODE), []);
    const flat = (bottom: string) =>
      messages(inPan("depth 12\n fall 0", "niche", { edges: overEdge(bottom) }), CODE);
    assert.deepEqual(flat("floor"), []);
    assert.equal(flat("tub").length, 1);
  });

  it("follows the plan's own limit, and is silent when that is off or the opening allows it", () => {
    const rules = (text: string): WallText =>
      inPan("depth 12\n fall 1/4", "niche", { plan: `rules {\n ${text}\n}` });
    assert.match(messages(rules("fall 1/24"), CODE)[0]!, /1\/24 of its depth of 12 in, so 1\/2 in/);
    assert.deepEqual(messages(rules("fall 1/48"), CODE), []);
    const flat = inPan("depth 12\n fall 0", "niche", { plan: "rules {\n fall off\n}" });
    assert.deepEqual(messages(flat, CODE), []);
    const allowed = inPan(`depth 12\n fall 0\n allow ${CODE} "a dry shelf"`);
    assert.equal(findings(allowed, CODE)[0]!.allowed, "a dry shelf");
  });
});
