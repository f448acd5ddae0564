import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

describe("allows", () => {
  it("tells one whose code no rule has, with the rules that begin alike", () => {
    const [found] = findings({ lay: 'allow cut/slither "oops"' }, "allow/unknown");
    assert.equal(found!.severity, "warning");
    assert.equal(
      found!.message,
      "no rule is called cut/slither; there are cut/sliver, cut/under-half, cut/thin-leg, cut/taper, cut/beyond-saw",
    );
    assert.deepEqual(messages({ wall: 'allow cuts/sliver "oops"' }, "allow/unknown"), [
      "no rule is called cuts/sliver",
    ]);
  });

  it("mentions one that silences nothing, at its own place", () => {
    const text = { size: "24 3/8 x 12 3/8" };
    for (const place of ["lay", "tile", "wall", "plan"] as const) {
      const [found] = findings(
        { ...text, [place]: 'allow cut/sliver "for later"' },
        "allow/unused",
      );
      assert.equal(found?.severity, "information", place);
      assert.equal(found.message, "nothing here needs cut/sliver to be allowed");
    }
  });

  it("is silent about one that silences something", () => {
    const text = { size: "13 x 3", lay: 'allow cut/sliver "behind the door"' };
    assert.deepEqual(messages(text, "allow/unused"), []);
    assert.deepEqual(messages(text, "allow/unknown"), []);
  });

  it("mentions an outer one when an inner one already does its work", () => {
    const allow = 'allow cut/sliver "behind the door"';
    assert.equal(findings({ size: "13 x 3", lay: allow, plan: allow }, "allow/unused").length, 1);
  });
});
