import assert from "node:assert/strict";
import { CUTS, pieceId, pieceShape } from "../../../src/solver/index.js";
import { boxesOf, faceOf, insidesOf } from "./niche-text.js";

describe("the surfaces inside a niche, by hand", () => {
  // The niche is 402 x 304 at 404, 306; 90 deep, its sill falling 3 over that. What lines it runs out to the wall
  // tile's face, 8 + 3 = 11 before the substrate, so that it is 101 deep. Each surface is 11 thick, and
  // its inner joints are as wide as the niche's own, 2.
  const insides = insidesOf();

  it("are the back, both sides, the sill and the head", () => {
    assert.deepEqual(
      insides.map(({ face, wall }) => [face, wall.name]),
      ["back", "left", "right", "sill", "head"].map((face) => [face, `back.shelf.${face}`]),
    );
  });

  it("have a back 402 x 301, whose joints are the wall's", () => {
    const back = faceOf(insides, "back");
    assert.deepEqual([back.wall.size.across, back.wall.size.up], [402e6, 301e6]);
    // The sill has risen to 309 there, and the wall's courses begin at 306, 408 and 510: at -3, 99 and 201. The
    // region is 2 inside all round; a tile begins at 404 and at 606, so at 0 and at 202.
    assert.deepEqual(boxesOf(back), [
      [2, 2, 200, 97],
      [202, 2, 400, 97],
      [2, 99, 200, 199],
      [202, 99, 400, 199],
      [2, 201, 200, 299],
      [202, 201, 400, 299],
    ]);
  });

  it("cover 11 of the back all round", () => {
    // 402 - 11 = 391 across, 301 - 11 = 290 up.
    assert.deepEqual(boxesOf(faceOf(insides, "back"), true), [
      [11, 11, 200, 97],
      [202, 11, 391, 97],
      [11, 99, 200, 199],
      [202, 99, 391, 199],
      [11, 201, 200, 290],
      [202, 201, 391, 290],
    ]);
  });

  it("have sides in the wall's courses, from the front to a joint before the back's tile", () => {
    // 101 less the back's 11 and its joint of 2 is 88. Up from the opening's bottom the courses begin at 0, 102, 204;
    // the head's 11 and 2 leave 304 - 13 = 291.
    const [first, ...others] = boxesOf(faceOf(insides, "left"));
    assert.deepEqual(others, [
      [0, 102, 88, 202],
      [0, 204, 88, 291],
    ]);
    assert.deepEqual([first![0], first![2], first![3]], [0, 88, 100]);
    const right = boxesOf(faceOf(insides, "right"));
    assert.deepEqual(right[1], [13, 102, 101, 202], "seen from the room its front is at the right");
  });

  it("scribe the sides' first course to the sill", () => {
    // Over 101 the sill falls 3 x 101 / 90 = 3.366667; it stands at 3 at the back, so at -0.366667 in front. Its
    // tile and a joint, 13.000001 square to a slope of 1 in 30, are 13.007222 up (the root of 901 is 30.016662):
    // 12.640555 in front and, 88 further in, 3.366667 x 88 / 101 = 2.933334 higher, rounded up.
    const { pieces } = faceOf(insides, "left").lays[0]!;
    assert.equal(CUTS[pieces.cut[0]!], "scribe");
    assert.deepEqual(
      pieceShape(pieces, 0).outline,
      [0, 12_640_555, 88_000_000, 15_573_889, 88_000_000, 100_000_000, 0, 100_000_000],
    );
  });

  it("have a sill as long as its slope, in line with the course under it", () => {
    // 101 x sqrt(90² + 3²) / 90 = 101.056095532...; less the back's 13.
    const sill = faceOf(insides, "sill");
    assert.equal(sill.wall.size.up, 101_056_096);
    assert.deepEqual(boxesOf(sill), [
      [2, 0, 200, 88.056096],
      [202, 0, 400, 88.056096],
    ]);
    assert.deepEqual(boxesOf(sill, true), [
      [11, 0, 200, 88.056096],
      [202, 0, 391, 88.056096],
    ]);
  });

  it("have a head whose front edge is at the top, as it is folded up", () => {
    assert.deepEqual(boxesOf(faceOf(insides, "head")), [
      [2, 13, 200, 101],
      [202, 13, 400, 101],
    ]);
  });

  it("name their pieces by wall, opening and surface", () => {
    const [lay] = faceOf(insides, "sill").lays;
    assert.equal(pieceId(lay!, 1), "back.shelf.sill/1/2");
  });
});

describe("the surfaces inside an opening", () => {
  it("are none where no depth is stated", () => {
    assert.deepEqual(insidesOf({ niche: "" }), []);
  });

  it("leave a window its own back, and end a soft joint before it", () => {
    const insides = insidesOf({ kind: "window", niche: "    depth 90mm" });
    assert.deepEqual(
      insides.map(({ face }) => face),
      ["left", "right", "sill", "head"],
    );
    assert.deepEqual(boxesOf(faceOf(insides, "head")), [
      [2, 2, 200, 101],
      [202, 2, 400, 101],
    ]);
  });

  it("leave out a row that the head hides whole", () => {
    // A course from 300 to 400 would show 300 to 301 of a back 310 high, and the head covers it from 299.
    const back = faceOf(
      insidesOf({ at: "404mm, 310mm", size: "402mm x 310mm", niche: "depth 90mm" }),
      "back",
    );
    // Courses begin at -4, 98, 200, 302.
    assert.equal(back.lays[0]!.courses.length, 3);
    assert.equal(back.lays[0]!.region.bounds.top, 300e6);
  });

  it("have no room for tile in a niche as shallow as the tile is thick", () => {
    const insides = insidesOf({ niche: "depth 1mm" });
    assert.deepEqual(faceOf(insides, "left").lays, []);
  });

  it("are the bond's head joints as well", () => {
    const back = faceOf(insidesOf({ bond: "running 1/2" }), "back");
    // Course 4 stands 101 to the right of course 1, as all even ones: joints at 101 - 2 in it, at 200 in course 5.
    assert.deepEqual(
      boxesOf(back).map(([left]) => left),
      [2, 101, 303, 2, 202, 2, 101, 303],
    );
  });
});
