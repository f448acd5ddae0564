import assert from "node:assert/strict";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { scribedUp } from "../../../src/solver/choose/scribed.js";
import { inches, oneWall } from "./model-plan.js";

describe("slivers along a slope", () => {
  const gentle = {
    measured: [
      { at: 0, off: 0 },
      { at: inches(60), off: inches(0.5) },
    ],
  };
  const { plan, wall, lay } = oneWall({
    face: [inches(4), inches(4)],
    size: [inches(60), inches(60)],
    sides: {
      bottom: gentle,
    },
  });
  const field = fieldOf(plan, wall, lay, lay.joint.min);

  it("are told for certain, but for the two ends, where the last of a course runs along it", () => {
    // The region's bottom is 1/8 in over the readings; the course's top an inch over its lowest.
    const bottom = inches(1.125) - inches(4);
    const { slivers } = scribedUp(field, { from: bottom, to: bottom });
    assert.ok(slivers >= 11 && slivers <= 14, `${slivers}`);
  });

  it("are told of no outline's slope, along which pieces are judged by their bounds", () => {
    const { plan, wall, lay } = oneWall({
      face: [inches(4), inches(4)],
      size: [inches(60), inches(60)],
      sides: { bottom: { ...gentle, outlined: true } },
    });
    const bottom = inches(1.125) - inches(4);
    const outlined = fieldOf(plan, wall, lay, lay.joint.min);
    const told = scribedUp(outlined, { from: bottom, to: bottom });
    assert.deepEqual(told, { slivers: 0, underHalf: 0 });
  });

  it("are not told of tiles that a sloping top may cut away", () => {
    const { plan, wall, lay } = oneWall({
      face: [inches(4), inches(4)],
      size: [inches(60), inches(60)],
      sides: {
        bottom: gentle,
        top: {
          measured: [
            { at: 0, off: 0 },
            { at: inches(60), off: inches(-60) },
          ],
          outlined: true,
        },
      },
    });
    const bottom = inches(1.125) - inches(4);
    const field = fieldOf(plan, wall, lay, lay.joint.min);
    assert.equal(scribedUp(field, { from: bottom, to: bottom }).slivers, 0);
  });

  it("are none where the course is high enough", () => {
    const bottom = inches(-0.5);
    assert.deepEqual(scribedUp(field, { from: bottom, to: bottom }), { slivers: 0, underHalf: 0 });
  });
});
