import assert from "node:assert/strict";
import { inPan, overEdge } from "./in-pan.js";
import { findings, messages } from "./wall-text.js";

const CODE = "opening/back-slope";

// fcimag.com/articles/93759; ANSI A108.01 3.6.4: horizontal surfaces drain, 1/4 in per ft.
describe("opening/back-slope", () => {
  it("tells a slope back into the wall as an error, from one nanometre on", () => {
    const [found] = findings(inPan("depth 3 1/2\n fall -1/8"), CODE);
    assert.equal(found!.severity, "error");
    // 3 1/2 in / 48 = 0.0729 in, so the next 1/32 in is 3/32 in.
    assert.equal(
      found!.message,
      "the sill of niche soap falls 1/8 in back into the wall, where water stands and works its way in; " +
        "at least 1/48 of its depth of 3 1/2 in, so 3/32 in, towards the room is wanted",
    );
    assert.equal(messages(inPan("depth 3 1/2\n fall -nm"), CODE).length, 1);
    assert.deepEqual(messages(inPan("depth 3 1/2\n fall 0"), CODE), []);
    assert.deepEqual(messages(inPan("depth 3 1/2"), CODE), []);
  });

  it("speaks of a bench's and a curb's top, and of a window's sill", () => {
    const told = (kind: string) => messages(inPan("depth 12\n fall -1/4", kind), CODE)[0]!;
    assert.match(told("window"), /^the sill of window soap falls 1\/4 in back/);
    assert.match(told("bench"), /^the top of bench soap falls/);
    assert.match(told("curb"), /^the top of curb soap falls/);
  });

  it("is not turned off with the limit of the fall: water is never traded", () => {
    const off = { plan: "rules {\n fall off\n}" };
    const lines = "depth 3 1/2\n fall -1/8";
    assert.match(messages(inPan(lines, "niche", off), CODE)[0]!, /so 3\/32 in, towards the room/);
    assert.deepEqual(messages(inPan(lines, "niche", off), "opening/flat-sill"), []);
  });

  it("is silent away from water, and silenced by an allow alone", () => {
    const dry = inPan("depth 12\n fall -1/4", "niche", { edges: overEdge("floor") });
    assert.deepEqual(messages(dry, CODE), []);
    const allowed = inPan(`depth 12\n fall -1/4\n allow ${CODE} "a planter, lined"`);
    assert.equal(findings(allowed, CODE)[0]!.allowed, "a planter, lined");
  });
});
