import assert from "node:assert/strict";
import { softJointsOf } from "../../../src/takeoff/materials/soft-joints.js";
import { solveClean } from "../../support/solve-text.js";

const STOCK =
  "bed 1/8\ntile field {\n face 6 x 3\n thickness 1/4\n}\ntrim nose {\n face 6 x 2\n thickness 1/4\n}\n";
const LAY = "lay field {\n bond stack\n joint 1/8\n}";

/** The soft joints of each wall: `left 96 x 1/8`, in inches. */
function jointsOf(walls: Readonly<Record<string, string>>): string[][] {
  const text =
    STOCK +
    Object.entries(walls)
      .map(([name, lines]) => `wall ${name} {\n${lines}\n${LAY}\n}\n`)
      .join("");
  const { plan, solved } = solveClean(text);
  return solved.walls.map((wall) =>
    softJointsOf(wall, plan.walls, plan.units).map(
      ({ along, length, width }) => `${along} ${length / 25_400_000} x ${width / 25_400_000}`,
    ),
  );
}

const HARD = "left free\nright free\nbottom free\ntop free\n";

describe("soft joints", () => {
  it("run along every side that moves, from corner to corner", () => {
    const [joints] = jointsOf({
      back: "size 60 x 96\nleft wall movement 1/8\nbottom pan movement 1/4\ntop wall joint 1/8\nright free trim nose",
    });
    assert.deepEqual(joints, ["left 96 x 0.125", "bottom 60 x 0.25"]);
  });

  it("are there where a side isn't stated: it is a wall with 1/8 in", () => {
    const [joints] = jointsOf({ back: "size 60 x 96" });
    assert.deepEqual(joints, [
      "left 96 x 0.125",
      "right 96 x 0.125",
      "bottom 60 x 0.125",
      "top 60 x 0.125",
    ]);
  });

  it("are as long as a measured side really is, rounded up", () => {
    // 3 in over 40 in, then 4 in over 30 in.
    const [joints] = jointsOf({
      back: "size 70 x 96\nleft free\nright free\ntop free\nbottom pan measured 0: 0, 40: 3, 70: -1 movement 1/8",
    });
    const length = Math.ceil(Math.hypot(40, 3) * 25.4e6) + Math.ceil(Math.hypot(30, 4) * 25.4e6);
    assert.deepEqual(joints, [`bottom ${length / 25.4e6} x 0.125`]);
  });

  it("end where a measured neighbour does", () => {
    const [joints] = jointsOf({
      back: "size 60 x 96\nleft wall measured 0: 1/2, 96: 1/4 joint 1/8\nright free\ntop ceiling movement 1/8\nbottom pan movement 1/8",
    });
    assert.deepEqual(joints, ["bottom 59.5 x 0.125", "top 59.75 x 0.125"]);
  });

  it("run round an opening, inside its frame where it has one", () => {
    const opening = (lines: string) =>
      `size 60 x 96\n${HARD}window sash {\n at 18, 40\n size 24 x 36\n${lines}\n}`;
    assert.deepEqual(jointsOf({ back: opening("movement 1/16") }), [["sash 120 x 0.0625"]]);
    assert.deepEqual(jointsOf({ back: opening("movement 1/8\nframe nose mitre\ninset 1") }), [
      ["sash 112 x 0.125"],
    ]);
    assert.deepEqual(jointsOf({ back: opening("") }), [[]]);
  });

  it("leave out what a door takes of the floor's, and run up its jambs and over its head", () => {
    const sides = "left free\nright free\ntop free\nbottom floor movement 1/8\n";
    assert.deepEqual(
      jointsOf({
        back: `size 60 x 96\n${sides}door way {\n at 10\n size 30 x 80\n movement 1/8\n}`,
      }),
      // The bottom's less the door and its own joints; the jambs from the tile's lowest up.
      [["bottom 29.75 x 0.125", "way 189.75 x 0.125"]],
    );
  });

  it("run round a bench and not along the floor under it", () => {
    const sides = "left free\nright free\ntop free\nbottom floor movement 1/8\n";
    assert.deepEqual(
      jointsOf({
        back: `size 60 x 96\n${sides}bench seat {\n at 0\n size 36 x 18\n movement 1/8\n}`,
      }),
      // The floor's from the bench and its joint on: 60 - 36 - 1/8. The bench's over it, 36, and down
      // its right side to the tile's lowest: 18 - 1/8. At its left the wall ends.
      [["bottom 23.875 x 0.125", "seat 53.875 x 0.125"]],
    );
  });

  it("run under a soffit and up its side to the tile's highest", () => {
    const sides = "left free\nright free\nbottom free\ntop ceiling movement 1/8\n";
    assert.deepEqual(
      jointsOf({
        back: `size 60 x 96\n${sides}soffit duct {\n at 30\n size 30 x 12\n movement 1/8\n}`,
      }),
      // The ceiling's up to the soffit and its joint: 30 - 1/8; under it 30, beside it 12 - 1/8.
      [["top 29.875 x 0.125", "duct 41.875 x 0.125"]],
    );
  });

  it("in a corner are one bead, the one of the wall that laps over", () => {
    const corner = (under: string, over: string) =>
      jointsOf({
        back: `size 60 x 96\nleft corner side under ${under}\nright free\nbottom free\ntop free`,
        side: `size 30 x 96\nright corner back over ${over}\nleft free\nbottom free\ntop free`,
      });
    assert.deepEqual(corner("movement 1/4", "movement 1/8"), [[], ["right 96 x 0.125"]]);
    assert.deepEqual(corner("movement 1/4", "joint 1/8"), [["left 96 x 0.25"], []]);
    assert.deepEqual(corner("joint 1/8", "movement 1/8"), [[], ["right 96 x 0.125"]]);
  });

  it("run along the steps of an outline, by the sides that they face", () => {
    // A half wall 40 high up to 20, then 90: the top is 40 over the high part and 20 over the low one; the
    // step between them, 50 high, faces left.
    const outline = "outline 0, 0 to 60, 0 to 60, 90 to 20, 90 to 20, 40 to 0, 40";
    const sides = "left wall movement 1/8\nright free\nbottom free\ntop ceiling movement 1/4\n";
    assert.deepEqual(jointsOf({ back: `${outline}\n${sides}` }), [
      ["left 90 x 0.125", "top 60 x 0.25"],
    ]);
  });

  it("run along a slope and along the riser at which it ends, each by the side that it faces", () => {
    // A ceiling that falls 30 in 40, 50 long, to 60, steps up by 30 there, and is level for 20.
    const outline = "outline 0, 0 to 60, 0 to 60, 90 to 40, 90 to 40, 60 to 0, 90";
    const sides = "left wall movement 1/8\nright free\nbottom free\ntop ceiling movement 1/4\n";
    assert.deepEqual(jointsOf({ back: `${outline}\n${sides}` }), [
      ["left 120 x 0.125", "top 70 x 0.25"],
    ]);
  });

  it("run under a leg's foot, and up its side along the pan", () => {
    const sides = "left free\nright free\ntop free\nbottom pan movement 1/8\n";
    assert.deepEqual(
      jointsOf({ back: `size 60 x 96\n${sides}leg left 6 down 4 floor movement 1/4` }),
      // Along the pan 60 - 6, and 4 up the leg's side; under the foot 6.
      [["bottom 58 x 0.125", "left leg 6 x 0.25"]],
    );
  });

  it("in the tile are told by their places, without what openings take of them", () => {
    const lay =
      "lay field {\n bond stack\n joint 1/8\n across full tile from left\n up full course from bottom";
    const soft = "\n movement joint over course 2\n movement joint at 30\n}";
    const niche = "niche shelf {\n at 24, 3\n size 12 x 6\n movement 1/8\n}\n";
    const text = `${STOCK}wall back {\nsize 60 x 96\n${HARD}${niche}${lay}${soft}\n}\n`;
    const { plan, solved } = solveClean(text);
    const told = softJointsOf(solved.walls[0]!, plan.walls, plan.units).map(
      ({ along, length, width }) => `${along} ${length / 25_400_000} x ${width / 25_400_000}`,
    );
    assert.deepEqual(told, [
      "shelf 36 x 0.125",
      // From side to side less the niche's 12 1/4; up less its 6 1/4, in which the level one lies.
      "over course 2 47.75 x 0.125",
      "at 30 9/16 in 89.75 x 0.125",
    ]);
  });

  it("between two lays are told once, however many stretches they have", () => {
    const panel =
      "lay field {\n bond stack\n joint 1/8\n at 12, 12\n size 24 x 12\n between movement 1/4\n}\n";
    const text = `${STOCK}wall back {\nsize 60 x 96\n${HARD}${panel}${LAY}\n}\n`;
    const { plan, solved } = solveClean(text);
    const [joint, ...others] = softJointsOf(solved.walls[0]!, plan.walls, plan.units);
    assert.equal(others.length, 0);
    // The upright ones go round the corners: 2 x (12 + 2 x 1/4) and 2 x 24.
    assert.deepEqual([joint!.length / 25_400_000, joint!.width / 25_400_000], [73, 0.25]);
  });
});
