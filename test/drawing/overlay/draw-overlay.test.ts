import assert from "node:assert/strict";
import { buildOverlay, type Fate } from "../../../src/drawing/index.js";
import { drawOverlayHeadless } from "../../../src/drawing/headless.js";
import { planOf, solvedOf, wallText } from "../support/scene-of.js";

const plan = solvedOf(planOf(wallText()));
const FATES: readonly Fate[] = ["moved", "recut", "fresh", "gone"];

function drawn(fates: readonly (Fate | null)[]): string {
  const wall = plan.walls[0]!;
  // What is gone is in the plan before alone.
  const after = fates.map((fate) => (fate === "gone" ? null : fate));
  const of = (each: readonly (Fate | null)[]) => new Map([[wall.lays[0]!, each]]);
  const told = {
    before: wall,
    after: wall,
    fates: { before: of(fates), after: of(after) },
    notes: [],
  };
  return drawOverlayHeadless(buildOverlay(plan.plan, [told]));
}

describe("drawOverlay", () => {
  const svg = drawn(FATES);

  it("tells each fate by a hatch or line of its own, not by colour alone", () => {
    const hatches = FATES.map(
      (fate) => new RegExp(`id="gl-back-${fate}-hatch"[^>]*`).exec(svg)![0],
    );
    const shapes = hatches.map((hatch) => hatch.replace(/.* d="/, ""));
    assert.equal(new Set(shapes.map((d) => d.slice(0, 200))).size, FATES.length);
    const weights = hatches.map((hatch) => /stroke-width="([^"]*)"/.exec(hatch)![1]);
    assert.ok(new Set(weights).size >= 3, weights.join());
    assert.match(svg, /id="gl-back-gone-outline"[^>]*stroke-dasharray/);
    assert.match(svg, /id="gl-back-was-pieces"[^>]*stroke-dasharray/);
  });

  it("draws what was kept, and no more, where nothing changed", () => {
    const same = drawn([]);
    assert.match(same, /data-kind="kept"/);
    for (const fate of [...FATES, "was-pieces"])
      assert.ok(!same.includes(`gl-back-${fate}"`), fate);
  });

  it("has ids that occur once", () => {
    const ids = [...svg.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
    assert.equal(new Set(ids).size, ids.length);
  });
});
