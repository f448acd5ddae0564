import assert from "node:assert/strict";
import { AreaBound } from "../../../src/takeoff/tiles/area-bound.js";
import { sortOut } from "../../../src/takeoff/tiles/kinds.js";

const FACE = { across: 100, up: 50, directional: true, kerf: 2 };

function areas(...pieces: (readonly [many: number, width: number, height: number])[]): AreaBound {
  const demands = pieces.flatMap(([many, width, height]) =>
    Array.from({ length: many }, () => ({ label: "", course: 1, width, height, needs: 0 })),
  );
  return new AreaBound(FACE, sortOut(FACE, demands).kinds);
}

describe("how many tiles it takes by area", () => {
  it("is what the pieces cover, each with its kerf", () => {
    // 49 and 2 times 24 and 2: four to a tile that is 102 by 52, and no more.
    assert.equal(areas([8, 49, 24]).best(0, Infinity), 2);
    assert.equal(areas([9, 49, 24]).best(0, Infinity), 3);
  });

  it("is one for each piece that is over half a tile both ways, at the coarsest too", () => {
    const five = areas([5, 55, 30]);
    assert.equal(five.best(0, Infinity), 5);
    assert.equal(five.coarsest(), 5);
  });

  it("is less at the coarsest where many small pieces count for nothing", () => {
    const mixed = areas([1, 49, 24], [60, 10, 10]);
    assert.equal(mixed.coarsest(), 1);
    assert.equal(mixed.best(0, Infinity), 2);
  });

  it("is no less than what is known, and no more is looked for than is enough", () => {
    const five = areas([5, 55, 30]);
    assert.equal(five.best(7, Infinity), 7);
    assert.equal(five.best(3, 3), 3);
  });

  it("is nothing for no piece", () => {
    assert.deepEqual([areas().coarsest(), areas().best(0, Infinity)], [0, 0]);
  });
});
