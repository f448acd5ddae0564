import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { pieceBounds, type SolvedWall } from "../../src/solver/index.js";
import { cornerText } from "../rules/corner-text.js";
import { findings } from "../rules/wall-text.js";
import { dadoText } from "../rooms/dado-text.js";
import { wrappedRoom } from "../rooms/wrapped-room.js";
import { solveClean } from "../support/solve-text.js";

/** How wide the first and the last piece of a course are, in inches. */
function endsOf({ lays: [lay] }: SolvedWall, course = 1): number[] {
  const { pieces } = lay!;
  return [pieces.courseStart[course - 1]!, pieces.courseStart[course]! - 1].map((i) => {
    const { left, right } = pieceBounds(pieces, i);
    return (right - left) / NM_PER.inch;
  });
}

const endsIn = (text: string): Map<string, number[]> =>
  new Map(solveClean(text).solved.walls.map((wall) => [wall.wall.name, endsOf(wall)]));

const side = (text: string, course = 1): number[] =>
  endsOf(solveClean(text).solved.walls[1]!, course);

// By hand: the first wall shows 2 9/16 in at its right. A wall has 59 5/8 in of tile behind its left
// corner; start + joint + n modules + end = 59 5/8:
//   3 7/16 + 1/16 + 9 x 6 1/16 + 1 9/16
//   4 7/16 + 1/16 + 9 x 6 1/16 + 9/16
//   5 7/16 + 1/16 + 8 x 6 1/16 + 5 5/8
const BY_HAND = [
  ["one", [2 + 7 / 16, 2 + 9 / 16]],
  ["two", [3 + 7 / 16, 1 + 9 / 16]],
  ["three", [4 + 7 / 16, 9 / 16]],
  ["four", [5 + 7 / 16, 5 + 5 / 8]],
];

describe("a start that goes on from another wall", () => {
  // The back is tiled over 60 - 2/8 = 59 3/4 in: of the dado seven modules of 8 1/16 and 3 5/16, of the field nine of 6 1/16 and 5 3/16.
  it("goes on from the lay that stands beside most of its own, of several at the corner", () => {
    const wrapped = "across wrapped from back added";
    const { walls } = solveClean(dadoText({ side: { dado: wrapped, field: wrapped } })).solved;
    const first = walls[1]!.lays.map(({ lay, pieces }) => {
      const { left, right } = pieceBounds(pieces, 0);
      return [lay.name, (right - left) / NM_PER.inch] as const;
    });
    assert.deepEqual(Object.fromEntries(first), {
      dado: 8 - (3 + 5 / 16),
      field: 6 - (5 + 3 / 16),
    });
  });

  it("is wrapped as in the worked example: behind 2 9/16 in 3 7/16 in added, 3 5/16 in swallowed", () => {
    // 3 x 6 on 60 in, centred on a tile, 1/8 in at each end (derived).
    const wrapped = (joint: string) =>
      cornerText({ side: { across: `wrapped from back ${joint}` } });
    assert.equal(side(wrapped("added"))[0], 3 + 7 / 16);
    assert.equal(side(wrapped("swallowed"))[0], 3 + 5 / 16);
  });

  it("goes round four corners, tile by tile", () => {
    assert.deepEqual([...endsIn(wrappedRoom())], BY_HAND);
  });

  it("is the same in whichever order walls are declared, and however they are called", () => {
    const turned = endsIn(wrappedRoom({ declared: ["three", "one", "four", "two"] }));
    for (const [name, ends] of BY_HAND) assert.deepEqual(turned.get(name as string), ends);
    const names = ["north", "east", "south", "west"];
    assert.deepEqual(
      [...endsIn(wrappedRoom({ names })).values()],
      BY_HAND.map(([, ends]) => ends),
    );
  });

  it("swallows each corner's 1/8 in, course by course in a running bond", () => {
    // Course 2 of the first wall stands 3 1/32 in to the right: its end is 2 9/16 + 3 1/32 = 5 19/32 in, and
    // 6 - 5 19/32 - 1/8 = 9/32 in is left of its tile behind the corner.
    const text = wrappedRoom({ across: "wrapped from PREVIOUS swallowed", bond: "running 1/2" });
    const [one, two] = solveClean(text).solved.walls;
    assert.equal(endsOf(one!, 2)[1], 5 + 19 / 32);
    assert.deepEqual([endsOf(two!, 1)[0], endsOf(two!, 2)[0]], [3 + 5 / 16, 9 / 32]);
    const broken = findings(text, "corner/bond-broken").filter(({ wall }) => wall !== "one");
    assert.deepEqual(broken, []);
  });

  it("swallows a tile whose rest is no wider than the corner's joint, and begins with the next", () => {
    // A whole tile at the corner: the gap of 1/8 in takes the joint of 1/16 in and as much of the next tile.
    const text = cornerText({
      across: "full tile from right",
      side: { across: "wrapped from back swallowed" },
    });
    assert.equal(side(text)[0], 6 - 1 / 16);
  });

  it("counts what is seen where the other wall's tile covers a strip of the end", () => {
    // What stands on the side wall is 7/16 in, of which 5/16 in hide the end of 2 9/16 in: 2 1/4 in show.
    const covered = { bed: "1/8", thickness: "5/16" };
    assert.equal(
      side(cornerText({ ...covered, side: { across: "wrapped from back added" } }))[0],
      3.75,
    );
    assert.equal(side(cornerText({ ...covered, side: { across: "mirrored from back" } }))[0], 2.25);
  });

  it("begins as the other wall ends when it is mirrored, at a left and at a right corner", () => {
    const text = cornerText({ side: { across: "mirrored from back" } });
    assert.equal(side(text)[0], 2 + 9 / 16);
    const turned = text
      .replace("right corner side under", "left corner side under")
      .replace("left corner back over", "right corner back over");
    assert.equal(side(turned)[1], 2 + 9 / 16);
  });

  it("lets the courses run on where the plan leaves them open", () => {
    const text = cornerText({
      up: "joint at 24",
      side: { across: "mirrored from back", up: "OPEN" },
    });
    const open = text.replace("    up OPEN\n", "");
    assert.deepEqual(findings(open, "corner/courses-miss"), []);
    const [back, other] = solveClean(open).solved.walls;
    assert.equal(other!.lays[0]!.lattice.y, back!.lays[0]!.lattice.y);
  });

  it("finds its course where the lowest courses of the two walls differ", () => {
    // The side wall goes down 9 in farther, three courses of 3 1/16 in less 3/16 in: its course 4 is the back wall's 1.
    const text = cornerText({
      bond: "running 1/2",
      up: "joint at 24",
      side: { across: "wrapped from back added", wall: "  right free" },
    }).replace(
      "size 36 x 48\n  bottom free",
      "size 36 x 48\n  bottom floor measured 0: -9, 36: -9 movement 0",
    );
    assert.deepEqual(findings(text, "corner/bond-broken"), []);
    assert.equal(side(text, 4)[0], 3 + 7 / 16);
  });

  it("is left to the solver where the other wall has no tile", () => {
    const text = cornerText({ side: { across: "mirrored from back" } });
    const bare = text.replace(/ {2}lay field \{[^}]*\}\n/, "");
    const { solved } = solveClean(bare);
    assert.deepEqual(solved.walls[1]!.lays[0]!.choice?.left, ["across"]);
  });
});
