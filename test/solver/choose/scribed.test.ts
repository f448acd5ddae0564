import assert from "node:assert/strict";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { scribedUp } from "../../../src/solver/choose/scribed.js";
import { inches, oneWall } from "./model-plan.js";

describe("slivers along a slope", () => {
  const { plan, wall, lay } = oneWall({
    face: [inches(4), inches(4)],
    size: [inches(60), inches(60)],
    sides: {
      bottom: {
        measured: [
          { at: 0, off: 0 },
          { at: inches(60), off: inches(0.5) },
        ],
      },
    },
  });
  const field = fieldOf(plan, wall, lay, lay.joint.min);

  it("are told for certain, but for the two ends, where the last of a course runs along it", () => {
    // The region's bottom is 1/8 in over the readings; the course's top an inch over its lowest.
    const bottom = inches(1.125) - inches(4);
    const { slivers } = scribedUp(field, { from: bottom, to: bottom });
    assert.ok(slivers >= 11 && slivers <= 14, `${slivers}`);
  });

  it("are none where the course is high enough", () => {
    const bottom = inches(-0.5);
    assert.deepEqual(scribedUp(field, { from: bottom, to: bottom }), { slivers: 0, underHalf: 0 });
  });
});
