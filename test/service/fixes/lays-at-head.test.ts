import assert from "node:assert/strict";
import type { Diagnostic } from "../../../src/model/index.js";
import { laysAtHead } from "../../../src/service/fixes/lays-at-head.js";
import { wallPlan } from "../plans.js";
import { stateOf } from "../state-of.js";

const START = "    joint 1/8\n    across full tile from left\n    up full course from bottom\n";

/** The names of the lays that a diagnostic speaks of at a word of the text. */
function laysAt(text: string, word: RegExp, file?: string): string[] {
  const state = stateOf(text);
  const line = text.split("\n").findIndex((each) => word.test(each));
  const { index, 0: found } = word.exec(text.split("\n")[line]!)!;
  const range = {
    start: { line, character: index },
    end: { line, character: index + found.length },
  };
  const diagnostic: Diagnostic = {
    ...{ code: "bond/offset-over-third", severity: "error", message: "", source: "" },
    ...{ file: file ?? state.document.file, range },
  };
  return laysAtHead(state, diagnostic).map(({ lay }) => lay.name);
}

describe("the lays that a diagnostic speaks of", () => {
  it("are one for each run of a list of courses", () => {
    const list = wallPlan(`${START}    courses 2, 1 of pressed, rest of pressed\n`);
    assert.deepEqual(laysAt(list, /pressed$|pressed(?= \{)/), [
      "pressed",
      "pressed-2",
      "pressed-3",
    ]);
  });

  it("are those inside an opening where a lining is underlined", () => {
    const niche =
      "niche n {\n at 12, 24\n size 24 x 12\n depth 4\n movement 1/8\n sides pressed\n }";
    const text = wallPlan(START).replace("  lay pressed", `${niche}\n  lay pressed`);
    assert.deepEqual(laysAt(text, /sides/), ["pressed", "pressed"]);
  });

  it("are none of another file, and none where nothing is laid", () => {
    const text = wallPlan(START);
    assert.deepEqual(laysAt(text, /pressed(?= \{)/, "/plans/other.tileplan"), []);
    assert.deepEqual(laysAt(text, /back(?= ")/), []);
  });

  it("are none of which courses are set", () => {
    const text = wallPlan(`${START}    set courses 1 to 3\n`);
    assert.deepEqual(laysAt(text, /pressed(?= \{)/), []);
  });
});
