import assert from "node:assert/strict";
import { overlayWall } from "../../../src/drawing/overlay/overlay-wall.js";
import type { Fate } from "../../../src/drawing/index.js";
import { planOf, solvedWallOf, wallText } from "../support/scene-of.js";

const NICHE = "  niche shelf {\n    at 12, 10\n    size 8 x 6\n  }\n  hole spout at 30, 5 across 1";
const before = solvedWallOf(planOf(wallText(NICHE)));
const after = solvedWallOf(
  planOf(wallText(NICHE.replace("at 12", "at 14").replace("30, 5", "31, 5"))),
);

function overlay(fate: Fate | null) {
  const fates = ({ solved: { lays } }: typeof before) =>
    new Map([[lays[0]!, Array.from(lays[0]!.pieces.course, (_, i) => (i === 0 ? fate : null))]]);
  return overlayWall(
    {
      before: before.solved,
      after: after.solved,
      fates: { before: fates(before), after: fates(after) },
      notes: ["niche shelf moves right 2 in"],
    },
    after.setting,
  );
}

describe("overlayWall", () => {
  it("groups pieces by fate and course, kept ones first", () => {
    const { groups } = overlay("recut");
    assert.equal(groups[0]?.fate, null);
    assert.equal(groups.at(-1)?.fate, "recut");
    const pieces = groups.flatMap(({ shapes }) => shapes).length;
    assert.equal(pieces, after.solved.lays[0]!.pieces.count);
  });

  it("takes of the plan before only what is gone, and where recut pieces were", () => {
    assert.equal(overlay("recut").was.pieces.length, 1);
    const gone = overlay("gone").groups.filter(({ fate }) => fate === "gone");
    // The first piece of both plans was called gone.
    assert.equal(gone.flatMap(({ shapes }) => shapes).length, 2);
  });

  it("shows where openings and holes were, and the bare wall where it changed", () => {
    const { was } = overlay(null);
    assert.deepEqual([was.openings.length, was.holes.length, was.bare], [1, 1, null]);
  });

  it("writes the notes over the wall", () => {
    const labels = overlay(null).base.labels.map(({ text }) => text);
    assert.deepEqual(labels.slice(0, 2), ["Back wall", "niche shelf moves right 2 in"]);
  });
});
