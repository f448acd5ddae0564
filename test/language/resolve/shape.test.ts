import assert from "node:assert/strict";
import { INCH, planOf, told, wallText } from "../telling.js";

const shaped = (outline: string, more: string) =>
  wallText("").replace("  size 60 x 96\n", `  outline ${outline}\n  ${more}\n`);
const HALF = "0, 0 to 60, 0 to 60, 90 to 20, 90 to 20, 40 to 0, 40";

describe("a wall's shape", () => {
  it("gives each step the sides that face it", () => {
    const [wall] = planOf(shaped(HALF, "left free\n  top ceiling movement 1/4")).walls;
    const [step] = wall!.steps;
    assert.deepEqual(
      [step!.meets.bottom!.meets.kind, step!.meets.right!.meets.kind],
      ["ceiling", "free"],
    );
  });

  it("has no other wall at a step, so that an outside corner's trim ends with its wall", () => {
    const other = "wall other {\n size 60 x 96\n right outside back under movement 1/8\n}\n";
    const [wall] = planOf(shaped(HALF, "left outside other over trim nose") + other).walls;
    assert.equal(wall!.edges.left.meets.kind, "outside");
    assert.deepEqual(wall!.steps[0]!.meets.right!.meets, { kind: "wall" });
  });

  it("adds readings to a side that the outline leaves straight, and tells of others", () => {
    const [wall] = planOf(
      shaped("0, 0 to 60, 0 to 60, 80 to 0, 80", "top ceiling measured 0: 1"),
    ).walls;
    assert.deepEqual(wall!.edges.top.measured, [{ at: 0, off: INCH }]);
    assert.deepEqual(told(shaped(HALF, "top ceiling measured 0: 1")), [
      "plan/outline [top] found readings along a top that the outline bends, wanted them in the outline; they are left out",
    ]);
  });

  it("may have trim along its steps and its slopes", () => {
    assert.deepEqual(told(shaped(HALF, "top free trim nose")), []);
    const gable = "0, 0 to 60, 0 to 60, 40 to 20, 40 to 0, 60";
    assert.deepEqual(told(shaped(gable, "top free trim nose")), []);
  });

  it("tells of a leg beside an outline", () => {
    assert.deepEqual(told(shaped(HALF, "leg left 5 down 4")), [
      "plan/leg [leg] found a leg beside an outline, wanted the leg in the outline",
    ]);
  });
});
