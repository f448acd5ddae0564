import assert from "node:assert/strict";
import { beyondMending } from "../../src/rules/beyond-mending.js";
import { solveClean } from "../support/solve-text.js";
import { setText } from "./set-text.js";
import { findings } from "./wall-text.js";

// 24 3/8 + 1/2 in: the right end of each course is 3/8 in wide, a sliver.
const narrow = { size: "24 7/8 x 24 7/8" };
const slivers = (set: string) =>
  findings(setText(set, narrow), "cut/sliver").map(({ severity, set: courses, pieces }) => [
    severity,
    courses ?? null,
    pieces!.length,
  ]);

describe("what can't be mended any more", () => {
  it("is told by itself, as information, and the rest as it was", () => {
    assert.deepEqual(slivers(""), [["error", null, 8]]);
    assert.deepEqual(slivers("set courses 1 to 3"), [
      ["information", "courses 1 to 3", 3],
      ["error", null, 5],
    ]);
    assert.deepEqual(slivers("set courses 1 to 8"), [["information", "courses 1 to 8", 8]]);
  });

  it("is not the course under the ledger, which is still to come", () => {
    assert.deepEqual(slivers("set courses 2 to 3"), [
      ["error", null, 1],
      ["information", "courses 2 to 3", 2],
      ["error", null, 5],
    ]);
  });

  it("says so at the end of its message", () => {
    const [found] = findings(setText("set courses 1 to 3", narrow), "cut/sliver");
    assert.match(found!.message, /is wanted; courses 1 to 3 are set: it can no longer be mended$/);
  });

  it("is also what is wrong with a lay that is set, and no piece is named", () => {
    const thin = { joint: "1/32" };
    const found = findings(
      setText("set courses 1 to 3 joint 1/32", { joint: "1/32" }),
      "joint/too-narrow",
    );
    assert.deepEqual(
      found.map(({ severity, set }) => [severity, set ?? null]),
      [
        ["error", null],
        ["information", "courses 1 to 3"],
      ],
    );
    assert.equal(findings(setText("", thin), "joint/too-narrow").length, 1);
  });

  it("is nothing where a piece is in a course that isn't set, or of another wall", () => {
    const [wall] = solveClean(setText("set courses 1 to 3")).solved.walls;
    const { origin } = wall!.wall;
    const asked = (...pieces: string[]) =>
      beyondMending(wall!, { origin, blocks: [], message: "", pieces });
    assert.equal(asked("back/1/1", "back/3/2"), "courses 1 to 3");
    assert.equal(asked("back/3/1", "back/4/1"), null);
    assert.equal(asked("back/3/1", "side/1/1"), null);
    assert.equal(beyondMending(wall!, { origin, blocks: [wall!.wall], message: "" }), null);
  });
});
