import assert from "node:assert/strict";
import { posesOf } from "../../../src/takeoff/tiles/demand.js";
import { EDGE } from "../../../src/takeoff/tiles/edges.js";
import { sortOut } from "../../../src/takeoff/tiles/kinds.js";

const FACE = { across: 100, up: 50, directional: false, kerf: 2 };

const piece = (label: string, width: number, needs: number) => ({
  label,
  course: 1,
  width,
  height: 20,
  needs,
});

describe("pieces by their kinds", () => {
  const [a, b, c] = [
    piece("a", 40, EDGE.left),
    piece("b", 30, EDGE.left),
    piece("c", 40, EDGE.left),
  ];

  it("are together where size and needed edges are the same, in the order of the first", () => {
    const { kinds } = sortOut(FACE, [a, b, c, piece("d", 40, EDGE.right)]);
    assert.deepEqual(
      kinds.map(({ demand, count }) => [demand.label, count]),
      [
        ["a", 2],
        ["b", 1],
        ["d", 1],
      ],
    );
  });

  it("stay in their own order, each with its kind", () => {
    const { pieces, kinds } = sortOut(FACE, [a, b, c]);
    assert.deepEqual(
      pieces.map(({ demand, kind }) => [demand.label, kinds.indexOf(kind)]),
      [
        ["a", 0],
        ["b", 1],
        ["c", 0],
      ],
    );
  });

  it("lie as each of them may", () => {
    const [kind] = sortOut(FACE, [a, c]).kinds;
    assert.deepEqual(kind!.poses, posesOf(c, FACE));
  });
});
