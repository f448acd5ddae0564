import assert from "node:assert/strict";
import { INCH, told, wallOf, wallText } from "../telling.js";

const niche = (lines: string): string => `niche shelf {\n${lines}\n}`;

describe("a range of lengths", () => {
  it("leaves an opening's place free, which is its lower end until it is settled", () => {
    const [shelf] = wallOf(niche("at 20 to 26, 40 to 48\nsize 12 x 12")).openings;
    assert.deepEqual(shelf!.at, { x: 20 * INCH, y: 40 * INCH });
    assert.deepEqual(shelf!.free, {
      x: { min: 20 * INCH, max: 26 * INCH },
      y: { min: 40 * INCH, max: 48 * INCH },
    });
  });

  it("is one place where both its ends are the same, or none is said", () => {
    const [shelf] = wallOf(niche("at 20 to 20, 40\nsize 12 x 12")).openings;
    assert.deepEqual(shelf!.free, { x: null, y: null });
  });

  it("is turned round where it is reversed, which is told", () => {
    const lines = niche("at 26 to 20, 40\nsize 12 x 12");
    assert.deepEqual(told(wallText(lines)), [
      "plan/range [20] found a range from 26 in to 20 in, wanted the smaller length first",
    ]);
    assert.deepEqual(wallOf(lines).openings[0]!.free.x, { min: 20 * INCH, max: 26 * INCH });
  });

  it("has to be in the wall with both its ends", () => {
    assert.deepEqual(told(wallText(niche("at 20 to 50, 40\nsize 12 x 12"))), [
      "plan/opening-outside [shelf] found the niche's right side at 62 in, wanted it inside the wall, at 60 in or less",
    ]);
    assert.deepEqual(told(wallText(niche("at 20, -3 to 40\nsize 12 x 12"))), [
      "plan/opening-outside [shelf] found the niche's bottom at -3 in, wanted it inside the wall, at 0 in or more",
    ]);
  });

  it("begins where the opening is apart from the others, and is told where it never is", () => {
    const sash = "window sash {\nat 10, 40\nsize 20 x 20\n}";
    const beside = `${sash}\n${niche("at 20 to 40, 45\nsize 12 x 12")}`;
    assert.deepEqual(told(wallText(beside)), []);
    assert.deepEqual(wallOf(beside).openings[1]!.at, { x: 40 * INCH, y: 45 * INCH });
    assert.deepEqual(told(wallText(`${sash}\n${niche("at 12 to 20, 45\nsize 12 x 12")}`)), [
      "plan/opening-overlap [shelf] found `shelf` over `sash`, wanted openings apart",
    ]);
  });

  it("is for a window or a niche, not for a door, nor for a size", () => {
    assert.deepEqual(told(wallText("door entry {\nat 10 to 12\nsize 30 x 80\n}")), [
      "plan/range [12] found a range, wanted a door's own place: only a niche or a window may be left free",
    ]);
    assert.deepEqual(told(wallText(niche("at 20, 40\nsize 12 x 12 to 14"))), [
      "plan/range [14] found a range of sizes, wanted one size: only an opening's place may be left free",
    ]);
  });
});

describe("a range of heights for a wall", () => {
  const wall = (size: string, top: string): string =>
    wallText("").replace("size 60 x 96", `size ${size}\n  top ${top}`);

  it("is where its tile may stop, below a free top", () => {
    assert.deepEqual(told(wall("60 x 72 to 78", "free")), []);
  });

  it("is told where the top meets something", () => {
    assert.deepEqual(told(wall("60 x 72 to 78", "ceiling movement 1/8")), [
      "plan/range [size] found a range of heights, wanted one: only where the top is `free` may the tile stop elsewhere",
    ]);
  });

  it("is no wall where its upper end is a kilometre", () => {
    assert.deepEqual(told(wall("60 x 72 to 2000m", "free")), [
      "plan/wall-too-large [72] found 78740 5/32+ in, wanted a wall of at most 39370 3/32- in",
    ]);
  });
});
