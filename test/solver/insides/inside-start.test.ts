import assert from "node:assert/strict";
import type { InsideFace } from "../../../src/model/index.js";
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

describe("where the plan states the start of a surface inside an opening, it", () => {
  const deep = (line: string): string => `depth 303mm\n ${line}`;
  const lefts = (niche: string, face: InsideFace, bond = "stack"): number[][] =>
    rows(boxesOf(faceOf(insidesOf({ niche, bond }), face)));
  const bottoms = (niche: string, face: InsideFace): number[] => [
    ...new Set(boxesOf(faceOf(insidesOf({ niche }), face)).map(([, bottom]) => bottom!)),
  ];

  it("is centred on the opening, on the wall or at a place of it, along the back, the sill and the head", () => {
    // 402 wide, tile from 2 to 400. A tile in the middle is from 101 to 301.
    const own = lefts("depth 90mm\n back field across tile centred on shelf", "back");
    assert.deepEqual(own[1], [2, 101, 303]);
    // The wall's middle is 605, 201 from the niche's left: the joint there is the wall's own, from 200 to 202.
    const wall = lefts("depth 90mm\n back field across joint centred on wall", "back");
    assert.deepEqual(wall[1], [2, 202]);
    // 500 is 96 from the niche's left: a tile from -4 to 196.
    const place = lefts("depth 90mm\n sill field across tile centred at 500mm", "sill");
    assert.deepEqual(place[0], [2, 198]);
  });

  it("is a whole tile from either end of the back", () => {
    const left = lefts("depth 90mm\n back field across full tile from left", "back");
    assert.deepEqual(left[1], [2, 204]);
    const right = lefts("depth 90mm\n back field across full tile from right", "back");
    assert.deepEqual(right[1], [2, 200]);
  });

  it("is a whole tile from the front or the back of both sides", () => {
    // 314 from front to back, tile as far as 13 before the back.
    const back = deep("sides field across full tile from back");
    assert.deepEqual(lefts(back, "left")[1], [0, 101]);
    assert.deepEqual(lefts(back, "right")[1], [13, 215]);
    const front = deep("sides field across full tile from front");
    assert.deepEqual(lefts(front, "left")[1], [0, 202]);
    assert.deepEqual(lefts(front, "right")[1], [13, 114]);
  });

  it("is a full course from the front or the back of the sill and the head", () => {
    assert.deepEqual(bottoms(deep("sill field up full course from back"), "sill"), [0, 99, 201]);
    assert.deepEqual(bottoms(deep("sill field up full course from front"), "sill"), [0, 102, 204]);
    assert.deepEqual(bottoms(deep("head field up full course from back"), "head"), [13, 115, 217]);
    assert.deepEqual(bottoms(deep("head field up full course from front"), "head"), [13, 112, 214]);
  });

  it("is a full course from the back's top, or a joint at a height of the wall", () => {
    const top = "depth 90mm\n back field up full course from top";
    // 304 high, tile from 2 to 302.
    assert.deepEqual(bottoms(top, "back"), [2, 100, 202]);
    // 408 is 102 over the niche's bottom; a sill of 11 and its joint of 2 end the sides at 13.
    const joint = "depth 90mm\n sides field up joint at 408mm";
    assert.deepEqual(bottoms(joint, "left"), [13, 103, 205]);
    // A back that begins 3 higher has the same height for it.
    const risen = "depth 90mm\n fall 3mm\n back field up joint at 408mm";
    assert.deepEqual(bottoms(risen, "back").slice(-2), [100, 202]);
  });

  it("speaks of course 1, and on the head of the row at the front", () => {
    const niche = deep("head field running 1/2 across tile centred on shelf");
    assert.deepEqual(lefts(niche, "head", "running 1/2").at(-1), [2, 101, 303]);
    assert.deepEqual(lefts(niche, "head", "running 1/2").at(-2), [2, 202]);
    const thirds = deep("head field running 1/3 across full tile from left");
    assert.deepEqual(lefts(thirds, "head", "running 1/3").at(-1), [2, 204]);
  });

  it("may be stated of one direction alone: the other is as is usual", () => {
    const across = lefts("depth 90mm\n back field across tile centred on shelf", "back");
    assert.equal(across.length, lefts("depth 90mm", "back").length);
    assert.deepEqual(
      bottoms("depth 90mm\n back field across tile centred on shelf", "back"),
      bottoms("depth 90mm", "back"),
    );
  });
});
