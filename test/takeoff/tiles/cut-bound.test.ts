import assert from "node:assert/strict";
import { cutBound } from "../../../src/takeoff/tiles/cut-bound.js";
import type { Demand } from "../../../src/takeoff/tiles/demand.js";
import { EDGE } from "../../../src/takeoff/tiles/edges.js";
import { type Kind, sortOut } from "../../../src/takeoff/tiles/kinds.js";

const FACE = { across: 100, up: 50, directional: false, kerf: 2 };
const NO_ENDS = { whole: 0, crosscuts: 0, rips: 0 };

function pieces(many: number, width: number, height: number, needs = 0): readonly Kind[] {
  const piece = { label: "", course: 1, width, height, needs };
  return sortOut(FACE, Array<Demand>(many).fill(piece)).kinds;
}

describe("the fewest tiles that pieces can take", () => {
  it("are those of the ends, at least", () => {
    assert.equal(cutBound(FACE, [], { whole: 2, crosscuts: 3, rips: 4 }), 9);
  });

  it("are as many as the pieces' areas need, each with its kerf", () => {
    // 49 and 2 times 24 and 2: four to a tile that is 102 by 52, and no more.
    assert.equal(cutBound(FACE, pieces(8, 49, 24), NO_ENDS), 2);
    assert.equal(cutBound(FACE, pieces(9, 49, 24), NO_ENDS), 3);
  });

  it("are not looked for past what is known to be enough", () => {
    const three = pieces(9, 49, 24);
    assert.equal(cutBound(FACE, three, { whole: 0, crosscuts: 2, rips: 0 }, 2), 2);
    assert.equal(cutBound(FACE, three, { whole: 0, crosscuts: 2, rips: 0 }, 3), 3);
  });

  it("are one for each piece that leaves no room beside it", () => {
    assert.equal(cutBound(FACE, pieces(5, 55, 30), NO_ENDS), 5);
  });

  it("count strips by their widths", () => {
    const strips = pieces(6, 40, 50, EDGE.bottom | EDGE.top);
    assert.equal(cutBound(FACE, strips, NO_ENDS), 3);
  });

  it("keep apart what spans a tile one way and the other, and what fits beside neither", () => {
    const rips = pieces(2, 100, 30, EDGE.left | EDGE.right | EDGE.bottom);
    const crosscuts = pieces(1, 60, 50, EDGE.bottom | EDGE.top | EDGE.left);
    const corner = pieces(1, 60, 40, EDGE.left | EDGE.bottom);
    const ends = { whole: 0, crosscuts: 1, rips: 2 };
    assert.equal(cutBound(FACE, [...rips, ...crosscuts], ends), 3);
    assert.equal(cutBound(FACE, [...rips, ...crosscuts, ...corner], ends), 4);
  });
});
