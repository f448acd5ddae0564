import assert from "node:assert/strict";
import { heightsMeeting } from "../../../src/solver/room/course-heights.js";
import { coursesMiss } from "../../../src/solver/room/misses.js";

const face = (up: number) => ({ across: 10, up });

describe("heights that meet another lay's courses", () => {
  it("are the same for the same courses", () => {
    assert.deepEqual(heightsMeeting({ face: 30, joint: 4 }, { face: 30, joint: 4 }, 7), [7]);
  });

  it("are one for each course of the smaller tile: 2 x 34 = 64 + 4", () => {
    const found = heightsMeeting({ face: 64, joint: 4 }, { face: 30, joint: 4 }, 7);
    assert.deepEqual(found, [7, 41]);
    for (const y of found) {
      const own = { y, face: face(64), joint: 4 };
      assert.equal(coursesMiss(own, { y: 7, face: face(30), joint: 4 }), 0);
    }
  });

  it("stand a joint's half off for another joint, to either side of half a nanometre", () => {
    assert.deepEqual(heightsMeeting({ face: 29, joint: 5 }, { face: 30, joint: 4 }, 7), [7, 8]);
  });

  it("are none where no module is a whole multiple of the other", () => {
    assert.deepEqual(heightsMeeting({ face: 30, joint: 5 }, { face: 30, joint: 4 }, 7), []);
  });
});
