import assert from "node:assert/strict";
import { cornerLines } from "../../../src/drawing/room/corner-words.js";
import { settingOf } from "../../../src/drawing/scene/setting.js";
import { cornerText } from "../../rules/corner-text.js";
import { outsideText, type OutsideText } from "../../rooms/outside-text.js";
import { solveClean } from "../../support/solve-text.js";

function linesOf(text: string): string[] {
  const { solved, plan } = solveClean(text);
  return cornerLines(solved.walls[0]!, solved.walls[1]!, settingOf(plan));
}

const outside = (parts: OutsideText) => linesOf(outsideText(parts));

describe("what is said of a corner", () => {
  it("is its kind, which wall covers, and the joint of the wall that has it", () => {
    assert.deepEqual(linesOf(cornerText()), [
      "inside corner",
      "Side wall covers",
      "soft joint 1/8",
    ]);
    assert.deepEqual(outside({}), ["outside corner", "Back wall covers", "grout joint 1/16"]);
    assert.deepEqual(
      outside({ right: "outside pier under movement 1/8", left: "outside back over" }),
      ["outside corner", "Pier covers", "soft joint 1/8"],
    );
  });

  it("says that a mitre has no wall that covers, and that no joint is stated", () => {
    assert.deepEqual(outside({ right: "outside pier mitre", left: "outside back mitre" }), [
      "outside corner",
      "mitred",
      "no joint stated",
    ]);
  });
});
