import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { choiceText } from "../../src/sheets/choice-text.js";
import type { Choice, Option } from "../../src/solver/index.js";

const eighth = NM_PER.inch / 8;

const BEST: Option = {
  across: { kind: "tile", centre: { on: "wall" } },
  up: { kind: "full-course", from: "bottom" },
  joint: eighth,
  score: { slivers: 0, underHalf: 12, imbalance: 0, cuts: 40, tiles: 120, jointOver: 0 },
};

const NEXT: Option = {
  ...BEST,
  across: { kind: "joint", centre: { on: "wall" } },
  score: { ...BEST.score, imbalance: eighth },
};

function text(more: Partial<Choice>): string {
  const choice: Choice = {
    by: "wall",
    left: ["across"],
    chosen: BEST,
    others: [NEXT],
    weighed: 36,
    decidedBy: "imbalance",
    capped: false,
    ...more,
  };
  return [...choiceText(choice, "inch")].join("");
}

describe("choiceText", () => {
  it("tells the chosen one and the next best with their numbers, and what decided", () => {
    assert.equal(
      text({}),
      `  chosen out of 36; the chosen one and the next best:
                                  slivers  under half  out of balance  cuts*  tiles  joint over
    across tile centred on wall         0          12            0 in     40    120        0 in
    across joint centred on wall        0          12          1/8 in     40    120        0 in
  decided by out of balance: 0 in against 1/8 in
  * a notched piece counts twice
`,
    );
  });

  it("names all that was left to the solver", () => {
    assert.match(
      text({ left: ["across", "up", "joint"], others: [] }),
      /\n {4}across tile centred on wall, up full course from bottom, joint 1\/8 +0 /,
    );
  });

  it("says where not all could be weighed", () => {
    assert.match(text({ capped: true }), /too many starts to weigh them all/);
    assert.doesNotMatch(text({}), /too many/);
  });
});
