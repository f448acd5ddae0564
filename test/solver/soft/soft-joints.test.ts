import assert from "node:assert/strict";
import {
  doubleShapeArea,
  pieceBounds,
  overlaps,
  softBox,
  softJoints,
  softLength,
} from "../../../src/solver/index.js";
import { randomFrom } from "../../support/random.js";
import { firstWall, solveClean } from "../../support/solve-text.js";

const INCH = 25_400_000;

/** A wall of 12 x 12 in tile in stack bond; joints of 1/8 in begin at 12 1/8, 24 1/4 ... from the left and the bottom. */
function planOf(lay: string, { wall = "", size = "100 x 60", bond = "stack" } = {}): string {
  return `units inch
tile field {\n face 12 x 12\n thickness 3/8\n}
tile liner {\n face 12 x 2\n thickness 3/8\n}
wall back {
  size ${size}
  left free\n right free\n bottom free\n top free
${wall}
  lay field {
    bond ${bond}
    joint 1/8
    across full tile from left
    up full course from bottom
${lay}
  }
}
`;
}

/** `level bed 24 1/8: 0 to 100`: each soft joint by its first side and where it is filled, in inches. */
function runsOf(text: string): string[] {
  const { wall } = firstWall(solveClean(text));
  return softJoints(wall).runs.map(({ way, name, from, to, parts }) => {
    const along = parts.map(({ bounds: { left, right, bottom, top } }) => {
      const [start, end] = way === "level" ? [left, right] : [bottom, top];
      return `${start / INCH} to ${end / INCH}`;
    });
    return `${way} ${name.kind} ${from / INCH} to ${to / INCH}: ${along.join(", ")}`;
  });
}

function missesOf(text: string): string[] {
  const { wall } = firstWall(solveClean(text));
  return softJoints(wall).missed.map(({ why }) => why);
}

describe("soft joints in the tile", () => {
  it("are none where the plan states none", () => {
    assert.deepEqual(runsOf(planOf("")), []);
  });

  it("fill the head joint nearest to a place, from the bottom of the lay to its top", () => {
    assert.deepEqual(runsOf(planOf("movement joint at 50")), [
      "upright head 48.375 to 48.5: 0 to 60",
    ]);
  });

  it("fill the bed joint over a course, from side to side", () => {
    assert.deepEqual(runsOf(planOf("movement joint over course 2")), [
      "level bed 24.125 to 24.25: 0 to 100",
    ]);
  });

  it("may be stated by the wall, where it has one lay", () => {
    const wall = "movement joint over course 2";
    assert.deepEqual(runsOf(planOf("", { wall })), ["level bed 24.125 to 24.25: 0 to 100"]);
  });

  it("go on at the other side of an opening and of a hole", () => {
    const wall = "window sash {\n at 40, 20\n size 20 x 10\n movement 1/8\n}";
    assert.deepEqual(
      runsOf(planOf("movement joint at 50\nmovement joint over course 2", { wall })),
      [
        "level bed 24.125 to 24.25: 0 to 39.875, 60.125 to 100",
        "upright head 48.375 to 48.5: 0 to 19.875, 30.125 to 60",
      ],
    );
    const hole = "hole valve at 30, 24 3/16 across 4";
    const { wall: laid } = firstWall(
      solveClean(planOf("movement joint over course 2", { wall: hole })),
    );
    const [run] = softJoints(laid).runs;
    assert.equal(run!.parts.length, 2);
  });

  it("cross: the level one goes through, and nothing is filled twice", () => {
    assert.deepEqual(runsOf(planOf("movement joint at 50\nmovement joint over course 2")), [
      "level bed 24.125 to 24.25: 0 to 100",
      "upright head 48.375 to 48.5: 0 to 24.125, 24.25 to 60",
    ]);
  });

  it("are counted through the tiles of a list, whose joints between are joints of the block", () => {
    const list = (joint: string) =>
      planOf(`courses 2 of field, 1 of liner, rest of field\n${joint}`);
    assert.deepEqual(runsOf(list("movement joint over course 2")), [
      "level bed 24.125 to 24.25: 0 to 100",
    ]);
    assert.deepEqual(runsOf(list("movement joint over course 3")), [
      "level bed 26.25 to 26.375: 0 to 100",
    ]);
    assert.deepEqual(runsOf(list("movement joint over course 4")), [
      "level bed 38.375 to 38.5: 0 to 100",
    ]);
    // Through all three, and the joints between them.
    assert.deepEqual(runsOf(list("movement joint at 50")), [
      "upright head 48.375 to 48.5: 0 to 24.125, 24.125 to 24.25, 24.25 to 26.25, 26.25 to 26.375, 26.375 to 60",
    ]);
  });

  it("go through courses that are set and those over them", () => {
    const set = "set courses 1 to 2\nmovement joint at 50\nmovement joint over course 2";
    assert.deepEqual(runsOf(planOf(set)), [
      "level bed 24.125 to 24.25: 0 to 100",
      "upright head 48.375 to 48.5: 0 to 24.125, 24.25 to 60",
    ]);
  });

  it("are the joints between lays that say so", () => {
    const second = "lay liner {\n bond stack\n joint 1/8\n}";
    assert.deepEqual(
      runsOf(planOf("covers bottom to 24\nbetween movement 1/4", { wall: second })),
      ["level between 24 to 24.25: 0 to 100"],
    );
    assert.deepEqual(runsOf(planOf("covers bottom to 24\nbetween 1/4", { wall: second })), []);
  });

  it("are those of the later lay, where both say something of the joint between them", () => {
    const second = "lay liner {\n bond stack\n joint 1/8\n between 3/8\n}";
    const lay = "covers bottom to 24\nbetween movement 1/4";
    assert.deepEqual(runsOf(planOf(lay, { wall: second })), []);
    const soft = second.replace("between", "between movement");
    assert.deepEqual(runsOf(planOf(lay, { wall: soft })), ["level between 24 to 24.375: 0 to 100"]);
  });

  it("may be stated over the last course of a lay that another one stands on", () => {
    const second = "lay liner {\n bond stack\n joint 1/8\n}";
    const lay = "covers bottom to 24\nmovement joint over course 2";
    assert.deepEqual(runsOf(planOf(lay, { wall: second })), ["level bed 24 to 24.125: 0 to 100"]);
  });

  it("are told by why where they aren't there", () => {
    const shifted = planOf("movement joint at 50", { bond: "running 1/2" });
    assert.deepEqual(missesOf(shifted), ["shifted"]);
    assert.deepEqual(missesOf(planOf("movement joint at 101")), ["no-head-joint"]);
    assert.deepEqual(missesOf(planOf("movement joint over course 6")), ["no-course"]);
    assert.deepEqual(missesOf(planOf("movement joint over course 5")), ["nothing-over"]);
    assert.deepEqual(missesOf(planOf("movement joint at 50\nmovement joint at 49")), ["twice"]);
    const list = planOf("courses 2 of field, rest of liner\nmovement joint at 50").replace(
      "face 12 x 2",
      "face 5 x 2",
    );
    assert.deepEqual(missesOf(list), ["out-of-line"]);
  });

  it("lie between tiles: no piece has any of them, and none is wider than the joint", () => {
    const random = randomFrom(1);
    for (let n = 0; n < 60; n++) {
      const [at, over] = [random.integer(5, 95), random.integer(1, 4)];
      const [x, y] = [random.integer(0, 60), random.integer(0, 30)];
      const wall = `niche shelf {\n at ${x}, ${y}\n size 20 x 15\n movement 1/8\n}`;
      const lay = `movement joint at ${at}\nmovement joint over course ${over}`;
      const { wall: solved, laid } = firstWall(solveClean(planOf(lay, { wall })));
      const { runs } = softJoints(solved);
      assert.equal(runs.length, 2);
      for (const run of runs) {
        assert.equal(run.to - run.from, INCH / 8);
        const area = run.parts.reduce((sum, { shape }) => sum + doubleShapeArea(shape), 0n);
        assert.ok(area > 0n);
        for (let i = 0; i < laid.pieces.count; i++) {
          assert.ok(
            !overlaps(pieceBounds(laid.pieces, i), softBox(run)) || laid.pieces.shapes.has(i),
          );
        }
      }
    }
  });

  it("are as long as what is filled of them", () => {
    const wall = "window sash {\n at 40, 20\n size 20 x 10\n movement 1/8\n}";
    const { wall: solved } = firstWall(
      solveClean(planOf("movement joint over course 2", { wall })),
    );
    assert.equal(softLength(softJoints(solved).runs[0]!) / INCH, 100 - 20.25);
  });
});
