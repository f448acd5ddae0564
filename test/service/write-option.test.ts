import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import type { Option } from "../../src/solver/index.js";
import { writeOption } from "../../src/service/write-option.js";
import { edited, wallPlan } from "./plans.js";
import { stateOf } from "./state-of.js";

const OPTION: Pick<Option, "across" | "up" | "joint"> = {
  across: { kind: "joint", centre: { on: "wall" } },
  up: { kind: "joint", y: 3.5 * NM_PER.inch },
  joint: NM_PER.inch / 16,
};

/** The lay's lines behind its bond, with the option written. */
function written(lay: string): string | null {
  const text = wallPlan(lay);
  const state = stateOf(text);
  const edits = writeOption(state, state.outcome.solved.walls[0]!.lays[0]!, OPTION);
  return edits && edited(text, edits).split("bond stack\n")[1]!.split("  }\n")[0]!;
}

const BOTH = "    across joint centred on wall\n    up joint at 3 1/2\n";

describe("an option written into a lay", () => {
  it("is added where the start is left open", () => {
    assert.equal(written("    joint 1/16\n"), `    joint 1/16\n${BOTH}`);
  });

  it("stands in place of what is there", () => {
    const stated =
      "    up full course from top   # so far\n    across tile centred at 7\n    joint 1/16\n";
    assert.equal(
      written(stated),
      "    up joint at 3 1/2   # so far\n    across joint centred on wall\n    joint 1/16\n",
    );
  });

  it("adds what is missing and replaces what isn't", () => {
    assert.equal(
      written("    joint 1/16\n    across tile centred at 7\n"),
      `    joint 1/16\n${BOTH}`,
    );
  });

  it("keeps the words of what stays the same", () => {
    assert.equal(
      written("    joint 1/16\n    across joint centred on wall\n    up joint at 3 + 1/2\n"),
      "    joint 1/16\n    across joint centred on wall\n    up joint at 3 + 1/2\n",
    );
  });

  it("settles the joint where a range is written", () => {
    assert.equal(written("    joint 1/16 to 1/8\n"), `    joint 1/16\n${BOTH}`);
  });

  it("is none where a statement of the lay can't be understood", () => {
    assert.equal(written("    joint 1/16\n    across tile centred on\n"), null);
  });
});
