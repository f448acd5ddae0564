import assert from "node:assert/strict";
import { findFaces } from "../../../src/solver/clip/faces.js";
import { buildPlanarGraph, type Role } from "../../../src/solver/clip/planar-graph.js";
import { ringOf } from "../../../src/solver/index.js";

const square = (left: number, bottom: number, side: number) =>
  ringOf({ left, bottom, right: left + side, top: bottom + side });

function windings(...roles: Role[]): string[] {
  const { winding } = findFaces(buildPlanarGraph(roles));
  return winding.map(({ subject, obstacle }) => `${subject} ${obstacle}`).sort();
}

describe("the faces of overlaid rings", () => {
  it("are the outside and the inside of one ring", () => {
    assert.deepEqual(windings({ ring: square(0, 0, 10), of: "subject" }), ["0 0", "1 0"]);
  });

  it("are wound round by every ring that covers them", () => {
    assert.deepEqual(
      windings(
        { ring: square(0, 0, 10), of: "subject" },
        { ring: square(5, 5, 10), of: "obstacle" },
        { ring: square(5, 5, 10), of: "obstacle" },
      ),
      ["0 0", "0 2", "1 0", "1 2"],
    );
  });

  it("of a ring inside another that it does not touch are wound round by both", () => {
    // The face round the inner ring is seen twice: from the outer ring and from the inner one.
    assert.deepEqual(
      windings(
        { ring: square(0, 0, 30), of: "subject" },
        { ring: square(10, 10, 5), of: "obstacle" },
      ),
      ["0 0", "1 0", "1 0", "1 1"],
    );
  });
});
