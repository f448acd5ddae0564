import assert from "node:assert/strict";
import { drawBands, drawGround, drawHidden } from "../../../src/drawing/svg/draw-ground.js";
import { planOf, sceneOf, wallOf, wallText } from "../support/scene-of.js";
import { drawn, valuesOf } from "../support/sheet.js";

describe("drawing the ground", () => {
  it("fills the region with grout, which shows between pieces", () => {
    const svg = drawn((into) => drawGround(into, wallOf(planOf(wallText())), 10));
    assert.ok(valuesOf(svg, "id").includes("gl-back-grout-field"));
    assert.ok(svg.includes('class="gl-fill-grout"'));
  });

  it("draws soft joints as bands of their own, hatched", () => {
    const svg = drawn((into) => drawBands(into, wallOf(planOf(wallText())), "soft", 10));
    const ids = ["left", "right", "bottom", "top"].map((side) => `gl-back-soft-${side}`);
    assert.ok(ids.every((id) => valuesOf(svg, "id").includes(id)));
    assert.ok(valuesOf(svg, "id").includes("gl-back-soft-hatch"));
  });

  it("veils a hidden strip and ends it with a dashed line", () => {
    const scene = sceneOf(
      planOf(
        [
          wallText("  right corner other over movement 1/8"),
          wallText("  left corner back under movement 1/8", "other"),
        ].join("\n"),
      ),
    );
    const svg = drawn((into) => drawHidden(into, scene.walls[1]!, 10));
    assert.ok(svg.includes('fill-opacity="0.55"'));
    assert.ok(svg.includes('stroke-dasharray="3.5 2" d="M12.7 0V-762"'));
    assert.equal(
      drawn((into) => drawHidden(into, scene.walls[0]!, 10)),
      "<g/>\n",
    );
  });
});
