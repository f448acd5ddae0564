import assert from "node:assert/strict";
import { bandText } from "./band-text.js";
import { findings, messages } from "./wall-text.js";

const CODE = "hole/plate-over";

describe("hole/plate-over", () => {
  it("tells a plate past the tile's side, with the way that mends it", () => {
    assert.deepEqual(messages({ wall: "hole v at 2, 6 across 2 plate 5" }, CODE), [
      "the plate of v runs 1/2 in past the left of the wall's tile; " +
        "a plate on tile alone, so its middle 1/2 in further right, is wanted",
    ]);
    assert.deepEqual(messages({ wall: "hole v at 2 1/2, 6 across 2 plate 5" }, CODE), []);
  });

  it("tells a plate on an opening's frame, or on its joint", () => {
    const window = (frame: string) =>
      messages(
        {
          size: "48 x 48",
          wall: `hole v at 12, 20 across 2 plate 6\nwindow sash {\n at 16, 12\n size 12 x 12\n movement 1/8\n ${frame}\n}`,
        },
        CODE,
      )[0];
    // The frame stands 2 in out, and its joint 1/8 in more: from 13 7/8 in; the plate ends at 15 in.
    assert.match(window("frame nose mitre")!, /runs 1 1\/8 in onto the frame of window sash/);
    assert.equal(window(""), undefined);
  });

  it("tells a plate over a band's edge, but not of a band that its hole goes through", () => {
    const of = (y: string) =>
      messages(bandText({ back: `hole v at 30, ${y} across 2 plate 6` }), CODE);
    // The band's bottom is at 25 in.
    assert.deepEqual(of("22 1/2"), [
      "the plate of v runs 1/2 in over the bottom of band liner; " +
        "a plate on tile alone, so its middle 1/2 in lower, is wanted",
    ]);
    assert.deepEqual(of("22"), []);
    assert.match(of("28")[0]!, /runs 1 in over the top of band liner; .* 1 in higher/);
    assert.deepEqual(of("25"), []);
  });

  it("speaks at the hole, as a warning, and is silenced by an allow", () => {
    const wall = "hole v at 2, 6 across 2 plate 5";
    assert.equal(findings({ wall }, CODE)[0]!.severity, "warning");
    const allowed = { wall: `${wall}\nallow ${CODE} "cut to fit"` };
    assert.equal(findings(allowed, CODE)[0]!.allowed, "cut to fit");
  });
});
