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

  it("has the back's and the sides' bed joints on the wall's where the own tile goes whole times into its courses", () => {
    // 49 and a joint of 2 are half of 102. The wall's joints are at 100 to 102 and so on; the niche begins at 306 in the
    // wall, its back 3 higher: joints of the back 2 wide from -5 (mod 51), those of the sides from -2.
    const plan = "tile small {\n face 98mm x 49mm\n thickness 8mm\n}";
    const niche = "depth 90mm\n fall 3mm\n back small joint 2mm\n sides small joint 2mm";
    const insides = insidesOf({ plan, niche });
    const tops = (face: "back" | "left"): number[] => [
      ...new Set(boxesOf(faceOf(insides, face)).map(([, , , top]) => top!)),
    ];
    assert.ok(tops("back").length > 4 && tops("left").length > 4);
    for (const top of tops("back").slice(0, -1)) assert.equal((top + 5) % 51, 0);
    for (const top of tops("left").slice(0, -1)) assert.equal((top + 2) % 51, 0);
  });

  it("begins any other tile with a full course at the sill", () => {
    const plan = "tile small {\n face 98mm x 50mm\n thickness 8mm\n}";
    const back = faceOf(insidesOf({ plan, niche: "depth 90mm\n back small joint 2mm" }), "back");
    const [, bottom, , top] = boxesOf(back)[0]!;
    assert.equal(top! - bottom!, 50);
  });
});
