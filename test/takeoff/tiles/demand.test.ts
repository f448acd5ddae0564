import assert from "node:assert/strict";
import { piecesToCut } from "../../../src/takeoff/cuts/pieces-to-cut.js";
import { demandOf, mayLie, posesOf } from "../../../src/takeoff/tiles/demand.js";
import { EDGE } from "../../../src/takeoff/tiles/edges.js";
import { cutWall, mm } from "../../support/cut-wall.js";

const FACE = { across: 100, up: 50, directional: false, kerf: 2 };
const corner = { label: "c", course: 1, width: 40, height: 30, needs: EDGE.left | EDGE.bottom };
const crosscut = { ...corner, height: 50, needs: EDGE.left | EDGE.bottom | EDGE.top };

describe("what a piece demands", () => {
  it("is its bounds and the edges that show", () => {
    const { wall } = cutWall({ size: "254 x 130" });
    assert.deepEqual(demandOf(piecesToCut(wall, "B").at(-1)!, 7), {
      label: "B-03-03",
      course: 7,
      width: mm(50),
      height: mm(26),
      needs: EDGE.left | EDGE.bottom,
    });
  });
});

describe("the ways to hold a piece to its tile", () => {
  it("are four for a corner, lying on its side in two of them", () => {
    assert.deepEqual(
      posesOf(corner, FACE).map(({ turns, width, height }) => [turns, width, height]),
      [
        [0, 40, 30],
        [1, 30, 40],
        [2, 40, 30],
        [3, 30, 40],
      ],
    );
    assert.equal(posesOf(corner, FACE)[1]!.needs, EDGE.bottom | EDGE.right);
  });

  it("are two for what spans an oblong tile, four in a square one", () => {
    assert.deepEqual(
      posesOf(crosscut, FACE).map(({ turns }) => turns),
      [0, 2],
    );
    const square = { ...FACE, across: 50 };
    assert.equal(posesOf(crosscut, square).length, 4);
  });

  it("is one for a tile with a direction", () => {
    assert.deepEqual(
      posesOf(corner, { ...FACE, directional: true }).map(({ turns }) => turns),
      [0],
    );
  });

  it("leave out those in which the piece is higher than the tile", () => {
    const long = { ...corner, width: 80 };
    assert.deepEqual(
      posesOf(long, FACE).map(({ turns }) => turns),
      [0, 2],
    );
  });

  it("have a turned one where the piece may lie", () => {
    for (const face of [FACE, { ...FACE, across: 50 }, { ...FACE, directional: true }]) {
      for (const piece of [corner, crosscut, { ...corner, width: 80 }]) {
        const turned = posesOf(piece, face).some(({ turns }) => turns % 2 === 1);
        assert.equal(mayLie(piece, face), turned);
      }
    }
  });
});
