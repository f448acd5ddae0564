import assert from "node:assert/strict";
import { buildOverlay, type ComparedWall, type Fate } from "../../../src/drawing/index.js";
import { checkScene } from "../support/check-scene.js";
import { planOf, solvedOf, wallText } from "../support/scene-of.js";

const plan = solvedOf(planOf(`${wallText("", "back")}\n${wallText("", "side")}`));

function compared(fates: readonly (Fate | null)[]): ComparedWall[] {
  return plan.walls.map((wall) => ({
    before: null,
    after: wall,
    fates: { before: new Map(), after: new Map([[wall.lays[0]!, fates]]) },
    notes: ["a note"],
  }));
}

describe("buildOverlay", () => {
  it("puts walls side by side on one level line", () => {
    const { walls } = buildOverlay(plan.plan, compared([]));
    assert.deepEqual(
      walls.map(({ base }) => base.name),
      ["back", "side"],
    );
    assert.ok(walls[0]!.base.at.x < walls[1]!.base.at.x);
    assert.equal(walls[0]!.base.at.y, walls[1]!.base.at.y);
  });

  it("has in its legend what occurs", () => {
    const words = (fates: readonly (Fate | null)[]) =>
      buildOverlay(plan.plan, compared(fates)).labels.map(({ text }) => text);
    assert.ok(words([]).includes("kept: same cut, same place"));
    assert.ok(!words([]).includes("new piece"));
    assert.ok(words(["fresh"]).includes("new piece"));
  });

  it("keeps the laws of every picture", () => {
    const scene = buildOverlay(plan.plan, compared(["moved", "recut", "fresh", "gone"]));
    checkScene({ ...scene, walls: scene.walls.map(({ base }) => base) }, "an overlay");
    checkScene({ ...buildOverlay(plan.plan, []), walls: [] }, "an empty overlay");
  });
});
