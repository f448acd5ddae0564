import assert from "node:assert/strict";
import { Cutting } from "../../../src/takeoff/tiles/cutting.js";
import { cutEnds as cutWanted } from "../../../src/takeoff/tiles/cut-ends.js";
import type { Demand } from "../../../src/takeoff/tiles/demand.js";
import { ALL_EDGES, EDGE } from "../../../src/takeoff/tiles/edges.js";
import { sortOut } from "../../../src/takeoff/tiles/kinds.js";

const FACE = { across: 100, up: 50, directional: false, kerf: 2 };
const UPRIGHT = EDGE.bottom | EDGE.top;

const cutEnds = (cutting: Cutting, demands: readonly Demand[]) =>
  cutWanted(cutting, sortOut(cutting.face, demands));

let named = 0;
const end = (width: number, side: number): Demand => ({
  label: `e${named++}`,
  course: 1,
  width,
  height: 50,
  needs: UPRIGHT | side,
});
const rip = (height: number, side: number): Demand => ({
  label: `r${named++}`,
  course: 1,
  width: 100,
  height,
  needs: EDGE.left | EDGE.right | side,
});

describe("ends of courses", () => {
  it("share a tile two by two, one at each end, the second turned half round", () => {
    const cutting = Cutting.of(FACE);
    const { tiles } = cutEnds(cutting, [end(40, EDGE.left), end(58, EDGE.left)]);
    assert.deepEqual(tiles, { whole: 0, crosscuts: 1, rips: 0 });
    assert.deepEqual(cutting.placed.map(({ box, turns }) => [box.left, box.right, turns]).sort(), [
      [0, 58, 0],
      [60, 100, 2],
    ]);
  });

  it("don't share when the kerf leaves too little", () => {
    const { tiles } = cutEnds(Cutting.of(FACE), [end(40, EDGE.left), end(59, EDGE.right)]);
    assert.equal(tiles.crosscuts, 2);
  });

  it("share only left with right where the tile has a direction", () => {
    const face = { ...FACE, directional: true };
    const both = (a: number, b: number) => cutEnds(Cutting.of(face), [end(40, a), end(40, b)]);
    assert.equal(both(EDGE.left, EDGE.left).tiles.crosscuts, 2);
    assert.equal(both(EDGE.left, EDGE.right).tiles.crosscuts, 1);
  });

  it("lie unturned where one needs the left end and one the right", () => {
    const cutting = Cutting.of(FACE);
    cutEnds(cutting, [end(58, EDGE.right), end(40, EDGE.left)]);
    assert.deepEqual(
      cutting.placed.map(({ turns }) => turns),
      [0, 0],
    );
  });

  it("are rips alike; rips and crosscuts share only square tiles", () => {
    const pieces = [rip(20, EDGE.bottom), rip(20, EDGE.bottom), end(40, EDGE.left)];
    assert.deepEqual(cutEnds(Cutting.of(FACE), pieces).tiles, { whole: 0, crosscuts: 1, rips: 1 });
    const square = { ...FACE, up: 100 };
    const mixed = [
      { ...end(40, EDGE.left), height: 100 },
      { ...rip(40, EDGE.top), width: 100 },
    ];
    assert.deepEqual(cutEnds(Cutting.of(square), mixed).tiles, { whole: 0, crosscuts: 1, rips: 0 });
  });

  it("leave what is no end, and give a tile to what is as large as one", () => {
    const whole: Demand = { label: "w", course: 1, width: 100, height: 50, needs: ALL_EDGES };
    const strip = { ...end(30, 0), needs: UPRIGHT };
    const { tiles, left } = cutEnds(Cutting.of(FACE), [whole, strip]);
    assert.equal(tiles.whole, 1);
    assert.deepEqual(
      left.map(({ demand }) => demand),
      [strip],
    );
  });
});
