import assert from "node:assert/strict";
import { floorSteps } from "../../src/rules/floor-steps.js";
import { INCH, planOf, wallText } from "../language/telling.js";

const stepsOf = (lines: string) => {
  const [wall] = planOf(wallText("").replace("  size 60 x 96\n", lines)).walls;
  return floorSteps(wall!).map(({ at, rise }) => [at / INCH, rise / INCH]);
};

describe("the steps of a floor", () => {
  it("are those between levels, seen rightwards", () => {
    const outline = "0, 4 to 10, 4 to 10, 0 to 40, 0 to 40, 7 to 60, 7 to 60, 90 to 0, 90";
    assert.deepEqual(stepsOf(`  outline ${outline}\n`), [
      [10, -4],
      [40, 7],
    ]);
  });

  it("are the risers beside slopes", () => {
    const outline = "0, 0 to 30, 4 to 30, -1 to 50, 0 to 50, 2 to 60, 2 to 60, 90 to 0, 90";
    assert.deepEqual(stepsOf(`  outline ${outline}\n`), [
      [30, -5],
      [50, 2],
    ]);
  });

  it("are a leg's side, and none on a level floor or in the top", () => {
    assert.deepEqual(stepsOf("  size 60 x 96\n  leg left 6 down 4 floor movement 1/8\n")[0]![0], 6);
    assert.deepEqual(stepsOf("  size 60 x 96\n"), []);
    assert.deepEqual(
      stepsOf("  outline 0, 0 to 60, 0 to 60, 90 to 30, 90 to 30, 80 to 0, 80\n"),
      [],
    );
  });
});
