import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import {
  coursesBeside,
  isOnJoints,
  jointsMet,
  offJoint,
} from "../../../src/solver/whole-tiles/joints-met.js";
import { fitted, nichePlan } from "./niche-plan.js";

const INCH = NM_PER.inch;
const NICHE = "niche n {\n at 12, 12 1/8\n size 12 1/4 x 12 3/8\n}";

function laid(bond: string) {
  const { laid: lay, wall } = fitted(nichePlan(NICHE, undefined, bond));
  return { lay, box: wall.region.takeaways[0]!.box };
}

describe("the joints that an opening meets", () => {
  const { lay, box } = laid("stack");

  it("are met at each side of one that takes whole tiles", () => {
    assert.ok(isOnJoints(lay, box));
    assert.deepEqual(jointsMet(lay, box), { beside: [3, 4], met: [3, 4] });
  });

  it("are missed by a nanometre", () => {
    const off = { ...box, left: box.left - 1 };
    assert.equal(offJoint(lay, off, "left"), 1);
    assert.ok(!isOnJoints(lay, off));
  });

  it("are met anywhere within them", () => {
    for (const by of [0, 1, INCH / 16, INCH / 8]) {
      assert.equal(offJoint(lay, { ...box, left: box.left + by }, "left"), 0);
    }
    assert.equal(offJoint(lay, { ...box, left: box.left + INCH / 8 + 1 }, "left"), INCH / 8 + 1);
  });

  it("are in every second course of a running bond by halves", () => {
    const running = laid("running 1/2");
    assert.deepEqual(jointsMet(running.lay, running.box), { beside: [3, 4], met: [3] });
  });

  it("are those of the courses that it interrupts", () => {
    assert.deepEqual(
      coursesBeside(lay, box).map(({ number }) => number),
      [3, 4],
    );
    assert.equal(offJoint(lay, { ...box, bottom: 100 * INCH, top: 110 * INCH }, "left"), Infinity);
  });
});
