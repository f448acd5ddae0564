import assert from "node:assert/strict";
import { run } from "../../../src/engine.js";
import { findingGroups } from "../../../src/drawing/scene/finding-groups.js";
import { findingMarks } from "../../../src/drawing/scene/marks.js";
import type { Diagnostic } from "../../../src/model/index.js";
import { pieceId } from "../../../src/solver/index.js";
import { ALONE } from "../../support/solve-text.js";
import { planOf, wallText } from "../support/scene-of.js";

const { solved } = run(planOf(wallText()), ALONE);
const wall = solved.walls[0]!;

function marksOf(severity: Diagnostic["severity"], pieces: string[]) {
  const nowhere = { line: 0, character: 0 };
  const range = { start: nowhere, end: nowhere };
  const finding = { code: "x/y", severity, message: "", file: "", range, wall: "back", pieces };
  return findingMarks(wall, findingGroups(["back"], [finding]).groups);
}

describe("the marks of findings", () => {
  it("outline the pieces that are named, and ask for one badge a finding", () => {
    const ids = [0, 5].map((i) => pieceId(wall.lays[0]!, i));
    const { marks, wishes } = marksOf("error", ids);
    assert.deepEqual(
      marks.map(({ piece, severity }) => [piece, severity]),
      ids.map((id) => [id, "error"]),
    );
    // 6 x 3 in, 1/8 in in from the left and up.
    assert.deepEqual(
      marks[0]!.ring,
      [3.175, -3.175, 155.575, -3.175, 155.575, -79.375, 3.175, -79.375],
    );
    assert.equal(wishes.length, 1);
  });

  it("pass over pieces that are not there", () => {
    const { marks, wishes } = marksOf("warning", [
      "back/99/1",
      "back/1/99",
      "nonsense",
      "back/1/1",
    ]);
    assert.deepEqual(
      marks.map(({ piece }) => piece),
      ["back/1/1"],
    );
    assert.equal(wishes.length, 1);
  });
});
