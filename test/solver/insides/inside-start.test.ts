import assert from "node:assert/strict";
import { boxesOf, faceOf, insidesOf } from "./niche-text.js";

const rows = (boxes: number[][]): number[][] => {
  const bottoms = [...new Set(boxes.map(([, bottom]) => bottom))];
  return bottoms.map((at) => boxes.filter(([, b]) => b === at).map(([left]) => left!));
};

describe("where the rows inside an opening stand", () => {
  it("has the sill's front row in line with the course under it, and further rows in the bond", () => {
    // 303 deep: 314 less 13 is three rows. Course 3 (odd) has joints from 402 to 404 and 604 to 606: 0, 202;
    // the second row is shifted by half a module, 101: from -101, 101, 303.
    const sill = faceOf(insidesOf({ bond: "running 1/2", niche: "depth 303mm" }), "sill");
    assert.deepEqual(rows(boxesOf(sill)), [
      [2, 202],
      [2, 101, 303],
      [2, 202],
    ]);
  });

  it("has the head's front row, at its top, in line with the course over it", () => {
    // Course 7 is odd as well; 314 deep, the front row is 214 to 314.
    const head = faceOf(insidesOf({ bond: "running 1/2", niche: "depth 303mm" }), "head");
    const boxes = boxesOf(head);
    // Inwards from the front, so downwards: odd, even, odd.
    assert.deepEqual(rows(boxes), [
      [2, 202],
      [2, 101, 303],
      [2, 202],
    ]);
    assert.equal(boxes.at(-1)![3], 314);
  });

  it("goes on in thirds the same way from the front, at the sill and at the head", () => {
    const insides = insidesOf({ bond: "running 1/3", niche: "depth 303mm" });
    const third = 202 / 3;
    const fromFront = (face: "sill" | "head"): number[] => {
      const all = rows(boxesOf(faceOf(insides, face)));
      return (face === "sill" ? all : all.reverse()).map((row) => row[1]!);
    };
    for (const face of ["sill", "head"] as const) {
      const [first, second] = fromFront(face);
      const shift = (((second! - first!) % 202) + 202) % 202;
      assert.ok(Math.abs(shift - third) < 0.001, `${face}: ${shift}`);
    }
  });

  it("has the sides whole at the front", () => {
    const insides = insidesOf({ niche: "depth 303mm" });
    assert.deepEqual(rows(boxesOf(faceOf(insides, "left")))[1], [0, 202]);
    // 314 - 200 = 114, and 202 less.
    assert.deepEqual(rows(boxesOf(faceOf(insides, "right")))[1], [13, 114]);
  });
});
