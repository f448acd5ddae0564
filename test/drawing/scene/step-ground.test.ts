import assert from "node:assert/strict";
import { bareOutline, groundBands } from "../../../src/drawing/scene/ground.js";
import { planOf, solvedWallOf } from "../support/scene-of.js";

const HALF = planOf(
  `wall back {
  outline 0, 0 to 600, 0 to 600, 900 to 200, 900 to 200, 400 to 0, 400
  left wall movement 4
  right wall movement 4
  bottom pan movement 4
  top ceiling movement 5
  lay field {
    bond stack
    joint 2
    across full tile from left
    up full course from bottom
  }
}`,
  "mm",
);

describe("the ground of a wall with steps", () => {
  const { solved } = solvedWallOf(HALF);

  it("has the outline for the bare wall; y runs down", () => {
    assert.deepEqual(
      [...bareOutline(solved)],
      [0, 0, 600, 0, 600, -900, 200, -900, 200, -400, 0, -400].map((value) => value + 0),
    );
  });

  it("has a soft joint along each edge of a step, as far as there is wall", () => {
    const bands = groundBands(solved).filter(({ part }) => part.startsWith("step"));
    const boxes = bands.map(({ kind, part, rings: [ring] }) => {
      const xs = ring!.filter((_, i) => i % 2 === 0);
      const ys = ring!.filter((_, i) => i % 2 === 1);
      return [kind, part, Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
    });
    // Right of the step 4 wide, from 5 under it up to the ceiling; under it 5 high.
    assert.deepEqual(boxes, [
      ["soft", "step-1-right", 200, 204, -900, -395],
      ["soft", "step-1-bottom", 0, 204, -400, -395],
    ]);
  });

  it("has no joint of the top over the step", () => {
    const top = groundBands(solved).find(({ part }) => part === "top");
    const xs = top!.rings.flatMap((ring) => ring.filter((_, i) => i % 2 === 0));
    assert.equal(Math.min(...xs), 200);
  });
});

describe("the ground of a wall with a riser", () => {
  it("has the riser's joint beside it, down to the tile under the slope that ends there", () => {
    const riser = planOf(
      `wall back {
  outline 0, 0 to 600, 0 to 600, 900 to 400, 900 to 400, 400 to 0, 700
  left wall movement 4
  right wall movement 4
  bottom pan movement 4
  top ceiling movement 5
  lay field {
    bond stack
    joint 2
    across full tile from left
    up full course from bottom
  }
}`,
      "mm",
    );
    const { solved } = solvedWallOf(riser);
    const [band, ...more] = groundBands(solved).filter(({ part }) => part.startsWith("riser"));
    assert.deepEqual([band!.kind, band!.part, more], ["soft", "riser-1", []]);
    const [ring] = band!.rings;
    const points = ring!.flatMap((x, i) => (i % 2 === 0 ? [[x, Math.round(-ring![i + 1]!)]] : []));
    // The tile is 5 square to the slope under it, 6.25 down, and at 404 as much lower as the slope goes on: 3.
    assert.deepEqual(points.map((point) => point.join(" ")).sort(), [
      "400 394",
      "400 900",
      "404 391",
      "404 900",
    ]);
    assert.equal(bareOutline(solved).length, 12);
  });
});
