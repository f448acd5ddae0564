import assert from "node:assert/strict";
import type { Alignment } from "../../../src/compare/comparison.js";
import { alignmentWords } from "../../../src/compare/words/alignment-words.js";

describe("the words of alignments", () => {
  const onJoint = (side: "left" | "right" | "top"): Alignment => ({
    kind: "opening on a joint",
    opening: "shelf",
    side,
  });

  it("say the sides of an opening in one line, what was gained before what was lost", () => {
    const meets: Alignment = { kind: "courses meet", wall: "end" };
    const told = alignmentWords([
      { before: meets, after: null },
      { before: null, after: onJoint("left") },
      { before: null, after: onJoint("right") },
      { before: null, after: onJoint("top") },
    ]);
    assert.deepEqual(told, [
      "gained: the left, right and top of shelf on joints",
      "lost: the courses meet those of end",
    ]);
  });

  it("say what is centred, and on what", () => {
    const centred = (on: string): Alignment => ({ kind: "centred", what: "joint", on });
    assert.deepEqual(
      alignmentWords([
        { before: null, after: onJoint("top") },
        { before: null, after: centred("wall") },
        { before: centred("sash"), after: null },
      ]),
      [
        "gained: the top of shelf on a joint",
        "gained: a joint on the centre line of the wall",
        "lost: a joint on the centre line of sash",
      ],
    );
  });
});
