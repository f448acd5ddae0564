import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import {
  cutOf,
  pieceBounds,
  pieceShape,
  type SolvedLay,
  visibleBounds,
} from "../../src/solver/index.js";
import { findings } from "../rules/wall-text.js";
import { wholeCount, widthsOf } from "../support/layout.js";
import { solveClean } from "../support/solve-text.js";
import { FOUR_WALLS } from "./four-walls-text.js";

const inches = (nm: number): number => nm / NM_PER.inch;
const { solved } = solveClean(FOUR_WALLS);
const [back, right, front, left] = solved.walls.map(({ lays }) => lays[0]!);
const all = [back!, right!, front!, left!];

/** The piece of a course, counted from the left. */
const pieceAt = ({ pieces }: SolvedLay, course: number, nth: number): number => {
  const [from, to] = [pieces.courseStart[course - 1]!, pieces.courseStart[course]!];
  return nth > 0 ? from + nth - 1 : to + nth;
};

const boxOf = (lay: SolvedLay, course: number, nth: number): number[] => {
  const { left, bottom, right, top } = pieceBounds(lay.pieces, pieceAt(lay, course, nth));
  return [left, bottom, right, top].map(inches);
};

function countsOf({ pieces }: SolvedLay): Record<string, number> {
  const counts: Record<string, number> = {};
  for (let i = 0; i < pieces.count; i++) {
    const cut = cutOf(pieces, i);
    counts[cut] = (counts[cut] ?? 0) + 1;
  }
  return counts;
}

/** Where course n's tiles stand: 24 + 1/32 is the bottom of the ninth. */
const bottomOf = (n: number): number => 24 + 1 / 32 + (n - 9) * (3 + 1 / 16);

// All figures by hand. A module is 6 1/16 across and 3 1/16 up.
describe("a shower of four walls, by hand", () => {
  // A bed joint's middle at 24. Eight modules below, 24 1/32 - 24 1/2 = -15/32: course 1, whose top is at 2 17/32. The sixteenth
  // begins at 45 15/32, and the tile ends at 48 - 1/8 = 47 7/8: 2 13/32 of it.
  it("has sixteen courses at the same heights on every wall", () => {
    for (const { courses } of all) {
      assert.deepEqual(
        courses.map(({ bottom }) => inches(bottom)),
        Array.from({ length: 16 }, (_, i) => bottomOf(i + 1)),
      );
    }
    assert.equal(bottomOf(1), -15 / 32);
    assert.equal(bottomOf(16), 45 + 15 / 32);
    assert.deepEqual(findings(FOUR_WALLS, "corner/courses-miss"), []);
  });

  it("has 14 whole courses; the top one is 2 13/32 on every wall", () => {
    for (const lay of all) {
      for (const [nth, course] of [2, 6, 13, 15].entries()) {
        const [, bottom, , top] = boxOf(lay, course, nth === 0 ? 1 : -1);
        assert.equal(top! - bottom!, 3);
      }
      const [, bottom, , top] = boxOf(lay, 16, 2);
      assert.equal(top! - bottom!, 2 + 13 / 32);
    }
  });

  // Over the pan's joint of 1/8: 2 17/32 - 1/8 = 2 13/32 where it is at 0, 0.32 less where it is at 0.32.
  it("has a first course of 2 13/32 at the left wall and of 0.32 less at the right one", () => {
    const height = (lay: SolvedLay, nth: number) => {
      const [, bottom, , top] = boxOf(lay, 1, nth);
      return Math.round((top! - bottom!) * 100_000) / 100_000;
    };
    assert.deepEqual([height(left!, 1), height(left!, -1)], [2.40625, 2.40625]);
    assert.deepEqual([height(right!, 1), height(right!, -1)], [2.08625, 2.08625]);
    assert.deepEqual([height(back!, 1), height(back!, -1)], [2.40625, 2.08625]);
    assert.deepEqual([height(front!, 1), height(front!, -1)], [2.08625, 2.40625]);
  });

  // The back's middle tile goes from 27 3/4 to 33 3/4. There the pan is at (27 3/4 - 14) / 100 and (33 3/4 - 14) / 100 of an inch.
  it("scribes the first course to the pan: the back's middle tile by 0.06 in", () => {
    const { outline } = pieceShape(back!.pieces, pieceAt(back!, 1, 6));
    assert.deepEqual(
      outline.map(inches),
      [
        [27.75, 0.125 + 0.1375],
        [33.75, 0.125 + 0.1975],
        [33.75, 2 + 17 / 32],
        [27.75, 2 + 17 / 32],
      ].flat(),
    );
  });

  // The back's middle is at 30 3/4, its middle tile's left at 27 3/4; four modules on, at 3 1/2. So its end goes from 1/8 to
  // 3 7/16: 3 5/16, of which the other walls' tile hides up to 7/16: 3 are seen.
  it("has 3 5/16 at both ends of the back, 3 of it seen", () => {
    const widths = widthsOf(back!).map(inches);
    assert.deepEqual(widths, [3 + 5 / 16, 6, 6, 6, 6, 6, 6, 6, 6, 6, 3 + 5 / 16]);
    for (const nth of [1, -1]) {
      const seen = visibleBounds(back!.pieces, pieceAt(back!, 2, nth))!;
      assert.equal(inches(seen.right - seen.left), 3);
    }
  });

  // What is left of the tile goes on: 6 - 3 = 3, from 7/16 + 1/8 = 9/16. Then 3 9/16 + 1/16 + 5 modules = 33 15/16, and to the
  // covered end at 37 3/8 - 1/8 = 37 1/4 are 3 5/16, 3 of it seen.
  it("goes on round the back's corners with 3, and ends with 3 5/16, 3 of it seen", () => {
    const onward = [3, 6, 6, 6, 6, 6, 3 + 5 / 16];
    assert.deepEqual(widthsOf(right!).map(inches), onward);
    assert.deepEqual(widthsOf(left!).map(inches), [...onward].reverse());
    assert.equal(boxOf(right!, 2, 1)[0], 9 / 16);
    assert.equal(boxOf(left!, 2, -1)[2], 37 + 3 / 8 - 9 / 16);
    for (const [lay, nth] of [
      [right!, -1],
      [left!, 1],
    ] as const) {
      const seen = visibleBounds(lay.pieces, pieceAt(lay, 2, nth))!;
      assert.equal(inches(seen.right - seen.left), 3);
    }
  });

  // 6 - 3 = 3 again, and from 9/16 to 60 15/16 are 60 3/8 = 3 + 1/16 + 9 x 6 1/16 + 2 3/4. Beside the left wall's 3 there should be 3, with
  // the corner's joint swallowed 2 7/8, and the offcut of its end as it is cut would be 6 - 3 5/16 = 2 11/16: it is 1/16 off that.
  it("comes round to the last corner with 2 3/4, and says so where less than 1/16 in is let pass", () => {
    assert.deepEqual(widthsOf(front!).map(inches), [3, 6, 6, 6, 6, 6, 6, 6, 6, 6, 2 + 3 / 4]);
    assert.deepEqual(findings(FOUR_WALLS, "corner/bond-broken"), []);
    const strict = FOUR_WALLS.replace("units inch", "units inch\nrules { wrap 1/32 }");
    const told = findings(strict, "corner/bond-broken");
    assert.deepEqual(
      told.map(({ wall }) => wall),
      ["front"],
    );
    assert.match(
      told[0]!.message,
      /starts with 2 3\/4 in beside 3 in of left-wall; 3 in or 2 7\/8 in/,
    );
  });

  // The window with its joint takes 19 5/8 to 41 7/8 and 20 13/32 to 33 31/32. Column 4 begins at 15 5/8, column 8 ends at 45 7/8: 4 in
  // are left of each. Course 7 begins at 17 29/32: 2 1/2 in stay under the sill, and of course 12, which ends at 36 7/32,
  // 2 1/4 over the head: what setters accept (common practice).
  it("has 4 in beside the window, 2 1/2 under its sill and 2 1/4 over its head", () => {
    for (const course of [8, 9, 10, 11]) {
      assert.deepEqual(widthsOf(back!, course).map(inches), [
        ...[3 + 5 / 16, 6, 6, 4],
        ...[4, 6, 6, 3 + 5 / 16],
      ]);
    }
    for (const nth of [5, 6, 7]) {
      const [, low, , sill] = boxOf(back!, 7, nth);
      assert.equal(sill! - low!, 2.5);
      const [, head, , high] = boxOf(back!, 12, nth);
      assert.equal(high! - head!, 2.25);
    }
  });

  it("notches the four tiles at the window's corners: 2 across, 1/2 and 3/4 up", () => {
    const outlineOf = (course: number, nth: number) =>
      pieceShape(back!.pieces, pieceAt(back!, course, nth)).outline.map(inches);
    const [sill, head] = [20 + 13 / 32, 33 + 31 / 32];
    assert.deepEqual(
      outlineOf(7, 4),
      [
        [15.625, bottomOf(7)],
        [21.625, bottomOf(7)],
        [21.625, sill],
        [19.625, sill],
        [19.625, bottomOf(7) + 3],
        [15.625, bottomOf(7) + 3],
      ].flat(),
    );
    assert.deepEqual(
      outlineOf(12, 8),
      [
        [41.875, bottomOf(12)],
        [45.875, bottomOf(12)],
        [45.875, bottomOf(12) + 3],
        [39.875, bottomOf(12) + 3],
        [39.875, head],
        [41.875, head],
      ].flat(),
    );
    assert.deepEqual([bottomOf(7) + 3 - sill, head - bottomOf(12)], [0.5, 0.75]);
    for (const [course, nth] of [
      [7, 4],
      [7, 8],
      [12, 4],
      [12, 8],
    ] as const)
      assert.equal(cutOf(back!.pieces, pieceAt(back!, course, nth)), "notch");
  });

  // Two tiles and three joints across are 12 3/16, four courses and five joints up 12 5/16 (as derived for a niche of four 3 in
  // tiles at 1/16 in). It begins where the second piece ends, at 9 5/8, and where course 6 ends, at 17 27/32.
  it("cuts nothing for the niche, which takes two tiles of four courses", () => {
    for (const course of [7, 8, 9, 10]) {
      assert.deepEqual(widthsOf(right!, course).map(inches), [3, 6, 6, 6, 3 + 5 / 16]);
    }
    assert.equal(bottomOf(6) + 3, 17 + 27 / 32);
    assert.deepEqual(findings(FOUR_WALLS, "opening/off-joint"), []);
  });

  // Back: 11 a course, 8 beside the window: 12 x 11 + 4 x 8 = 164. Course 1: two corners, two rips, seven scribed between 14 and 46;
  // two ends in courses 2 to 15 and eight beside the window; three rips under and three over it; nine and two corners at the top.
  it("comes to 556 pieces, 354 of them whole", () => {
    assert.deepEqual(countsOf(back!), {
      ...{ none: 96, end: 28 + 8, rip: 2 + 3 + 3 + 9, corner: 4, notch: 4, scribe: 7 },
    });
    assert.deepEqual(countsOf(right!), { none: 14 * 5 - 8, end: 28, rip: 10, corner: 4 });
    assert.deepEqual(countsOf(left!), { none: 14 * 5, end: 28, rip: 10, corner: 4 });
    assert.deepEqual(countsOf(front!), { none: 14 * 9, end: 28, rip: 11, corner: 4, scribe: 7 });
    assert.deepEqual(
      all.map(({ pieces }) => pieces.count),
      [164, 104, 176, 112],
    );
    assert.equal(
      all.reduce((sum, lay) => sum + wholeCount(lay), 0),
      354,
    );
  });
});
