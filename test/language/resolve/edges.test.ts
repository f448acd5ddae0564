import assert from "node:assert/strict";
import { INCH, told, wallOf, wallText } from "../telling.js";

describe("an edge", () => {
  it("that isn't stated is a wall with a soft joint of 1/8 in", () => {
    const { edges, origin } = wallOf("");
    for (const side of ["left", "right", "bottom", "top"] as const) {
      assert.deepEqual(edges[side], {
        side,
        meets: { kind: "wall" },
        measured: [],
        outlined: false,
        joint: { kind: "movement", width: INCH / 8 },
        stated: false,
        origin,
      });
    }
  });

  it("that is stated without a joint has none", () => {
    assert.equal(wallOf("  bottom pan").edges.bottom.joint, null);
    assert.equal(wallOf("  left free").edges.left.joint, null);
  });

  it("has a soft or a hard joint, and readings, in any order", () => {
    const { bottom, top } = wallOf(
      "  bottom tub movement 1/8 measured 0: 1\n  top counter joint 0",
    ).edges;
    assert.deepEqual(
      [bottom.joint, bottom.measured],
      [{ kind: "movement", width: INCH / 8 }, [{ at: 0, off: INCH }]],
    );
    assert.deepEqual(top.joint, { kind: "joint", width: 0 });
  });

  it("may be free with a trim, or without one", () => {
    const { left, right } = wallOf("  left free trim nose\n  right free").edges;
    assert.ok(left.meets.kind === "free" && right.meets.kind === "free");
    assert.equal(left.meets.trim?.name, "nose");
    assert.equal(right.meets.trim, null);
  });

  it("said twice is told, and the first stands", () => {
    const lines = "  left free\n  left wall";
    assert.deepEqual(told(wallText(lines)), [
      "plan/said-twice [left] found `left` again, wanted each side once",
    ]);
    assert.equal(wallOf(lines).edges.left.meets.kind, "free");
  });

  it("with two joints or two sets of readings is told, and the first stands", () => {
    const lines = "  left wall movement 1/8 joint 1/4 measured 0: 0 measured 0: 1";
    assert.deepEqual(told(wallText(lines)), [
      "plan/said-twice [joint] found a joint again, wanted it once for a side",
      "plan/said-twice [measured] found `measured` again, wanted it once for a side",
    ]);
    assert.equal(wallOf(lines).edges.left.joint?.width, INCH / 8);
  });

  it("with a joint under zero is told", () => {
    assert.deepEqual(told(wallText("  left wall movement -1/8")), [
      "plan/size [-1/8] found -1/8 in, wanted zero or more",
    ]);
  });

  it("with a trim that isn't there is told; a tile is no trim", () => {
    assert.deepEqual(told(wallText("  left free trim nos")), [
      "plan/name-unknown [nos] found no trim called `nos`; did you mean `nose`?",
    ]);
    assert.deepEqual(told(wallText("  left free trim field")), [
      "plan/name-unknown [field] found the tile `field`, wanted a trim",
    ]);
  });

  it("whose line is broken counts as unstated", () => {
    assert.equal(wallOf("  left corner").edges.left.stated, false);
  });
});
