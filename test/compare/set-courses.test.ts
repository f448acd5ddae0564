import assert from "node:assert/strict";
import { comparisonText, headline, setCoursesAgainst } from "../../src/compare/index.js";
import { setCoursesCut } from "../../src/compare/set-courses.js";
import { matchPieces } from "../../src/compare/match-pieces.js";
import { comparisonOf, edited, told, WALL } from "./wall.js";

/** Six courses of ten tiles, a niche beside course 3, which is at 8 3/8 to 12 3/8 in. */
const set = (lines: string) => edited(WALL, ["from bottom", `from bottom\n    ${lines}`]);
const SET = set("set courses 1 to 3");

function onWall(before: string, after: string) {
  const [old, now] = [before, after].map((text) => told(text).solved.walls[0]!);
  return setCoursesCut(matchPieces({ before: old!, after: now! }));
}

describe("courses that are set, in a comparison", () => {
  it("say nothing where they stay as they are", () => {
    const nothing = { before: [], after: [] };
    assert.deepEqual(onWall(WALL, SET), nothing);
    assert.deepEqual(onWall(SET, WALL), nothing);
    assert.deepEqual(onWall(SET, set("set courses 1 to 5")), nothing);
    assert.deepEqual(
      onWall(SET, edited(SET, ["size 41 3/8 x 22 7/8", "size 41 3/8 x 23"])),
      nothing,
    );
  });

  it("may move up, as a measured top moves them", () => {
    assert.deepEqual(onWall(SET, set("set courses 1 to 3 top 12 7/16")).before, []);
  });

  it("tell an opening, a side or a tile that would cut them anew", () => {
    const niche = edited(SET, ["at 16 5/8, 8 3/8", "at 16 5/8, 7 3/8"]);
    // Two tiles of course 2 are notched under it; over it, in course 3, two pieces would be new.
    assert.deepEqual(
      onWall(SET, niche).before.map(({ courses }) => courses),
      [[2, 3]],
    );
    const side = edited(SET, ["size 41 3/8", "size 40 3/8"]);
    assert.deepEqual(onWall(SET, side).before, [{ lay: null, courses: [1, 2, 3], pieces: 3 }]);
    const tile = edited(SET, ["face 4 x 4", "face 3 7/8 x 4"]);
    const [each] = onWall(SET, tile).before;
    assert.deepEqual(each!.courses, [1, 2, 3]);
  });

  it("tell a start that would move them across", () => {
    const start = edited(SET, ["full tile from left", "joint centred at 2"]);
    assert.deepEqual(onWall(SET, start).before[0]!.courses, [1, 2, 3]);
  });

  it("are of the plan in which they are set", () => {
    const side = edited(WALL, ["size 41 3/8", "size 40 3/8"]);
    assert.deepEqual(onWall(side, SET).before, []);
    assert.deepEqual(onWall(side, SET).after, onWall(SET, side).before);
  });

  it("are a group of their own in words, in the headline, and counted", () => {
    const comparison = comparisonOf(SET, edited(SET, ["size 41 3/8", "size 40 3/8"]));
    assert.match(
      [...comparisonText(comparison)].join(""),
      /On the wall already\n {2}set courses 1 to 3 would be cut differently, 3 of their pieces: they are on the wall\n/,
    );
    assert.match(headline(comparison), /^3 set courses cut differently, /);
    assert.equal(setCoursesAgainst(comparison), 3);
    assert.equal(setCoursesAgainst(comparisonOf(SET, SET)), 0);
  });
});
