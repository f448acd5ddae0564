import assert from "node:assert/strict";
import { roundParts } from "../../../src/solver/choose/round-parts.js";
import { inches, oneWall } from "./model-plan.js";

const given = { face: [inches(6), inches(3)], size: [inches(60), inches(40)] } as const;
const { wall } = oneWall({ ...given, holes: [[0, 0, 200]] });
const round = { hole: wall.holes[0]!, box: { left: -100, bottom: -100, right: 100, top: 100 } };

describe("what a round hole leaves of a box", () => {
  it("is all of it where the hole lies within or misses it", () => {
    const box = { left: -200, bottom: -200, right: 200, top: 200 };
    assert.deepEqual(roundParts(box, round), [box]);
    assert.equal(roundParts({ left: 90, bottom: 90, right: 200, top: 200 }, round), null);
  });

  it("is nothing where the box lies within the hole", () => {
    assert.deepEqual(roundParts({ left: -50, bottom: -50, right: 50, top: 50 }, round), []);
  });

  it("is two parts where the hole goes right across, each to where its sides meet the rim", () => {
    const parts = roundParts({ left: -60, bottom: -300, right: 60, top: 300 }, round)!;
    assert.deepEqual(
      parts.map(({ left, right }) => [left, right]),
      [
        [-60, 60],
        [-60, 60],
      ],
    );
    assert.deepEqual(
      parts.map(({ bottom, top }) => [bottom, top]),
      [
        [-300, -80],
        [80, 300],
      ],
    );
  });
});
