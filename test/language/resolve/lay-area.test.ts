import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { solveText } from "../../support/solve-text.js";
import { wallOfLays } from "./lays-text.js";

const LAID = "bond stack\n joint 1/4\n across full tile from left\n up full course from bottom";

/** The liner with these lines, in a field that has the rest: where each is, in inches, and what is told. */
function read(lines: string) {
  const text = wallOfLays(`lay liner {\n ${LAID}\n ${lines}\n}\nlay field {\n ${LAID}\n}`);
  const { solved, diagnostics } = solveText(text);
  const boxes = solved.walls[0]!.lays.map(({ lay, region: { bounds } }) => {
    const { left, bottom, right, top } = bounds;
    return `${lay.name} ${[left, bottom, right, top].map((nm) => nm / NM_PER.inch).join(" ")}`;
  });
  const told = diagnostics.filter(({ code }) => code.startsWith("plan/"));
  return { boxes, told: told.map(({ code, message }) => `${code} ${message}`) };
}

describe("what of a wall a lay covers", () => {
  it("goes from one side up to a place, and the rest begins a joint past it", () => {
    assert.deepEqual(read("covers bottom to 8").boxes, ["liner 0 0 24 8", "field 0 8.25 24 24"]);
    assert.deepEqual(read("covers left to 10").boxes, ["liner 0 0 10 24", "field 10.25 0 24 24"]);
    assert.deepEqual(read("covers top to 20").boxes, ["liner 0 20 24 24", "field 0 0 24 19.75"]);
  });

  it("has the joint between that is stated", () => {
    assert.deepEqual(read("covers bottom to 8\n between 1").boxes[1], "field 0 9 24 24");
  });

  it("is told outside the wall, with half a panel, or with its ends the wrong way round", () => {
    const cases = {
      "covers bottom to 30": "found 30 in, wanted a place within the wall, between 0 and 24 in",
      "covers left to 0": "found 0 in, wanted a place within the wall",
      "at 4, 4": "found a part of a panel's place",
      "size 4 x 4": "found a part of a panel's place",
      "at 2, 2\n size 50 x 4": "found a panel from 2 in, 2 in to 52 in, 6 in, wanted it within",
      "covers left to 8\n covers right to 12":
        "found a lay from 12 in to 8 in, wanted its first end before",
      "covers left to 8\n covers left to 9": "found where it ends at the right again",
    };
    for (const [lines, message] of Object.entries(cases)) {
      assert.ok(
        read(lines).told.some((each) => each.includes(message)),
        `${lines}: ${read(lines).told.join("; ")}`,
      );
    }
  });
});
