import assert from "node:assert/strict";
import { run } from "../../src/engine.js";
import { ALONE } from "../support/solve-text.js";
import { findings, messages, type WallText, wallText } from "./wall-text.js";

const CODE = "trim/past-end";
const SIDES =
  "left wall movement 1/8\nright wall movement 1/8\nbottom pan movement 1/8\ntop ceiling movement 1/8";

/** A wall of 60 x 60 with a window of 10 x 10 whose frame is 2 wide. */
const wall = (at: string, edges = SIDES): WallText => ({
  size: "60 x 60",
  edges,
  wall: `window sash {\n at ${at}\n size 10 x 10\n movement 1/8\n frame nose mitre\n}`,
});

describe(CODE, () => {
  it("tells a frame that reaches past the wall, as an error, at its own line", () => {
    const [found, ...more] = findings(wall("1 1/2, 20"), CODE);
    assert.equal(
      found!.message,
      "the frame of window sash reaches 1/2 in past the left of the wall; its outer edge 5/8 in further in, where tile may end, is wanted",
    );
    assert.deepEqual([found!.severity, more], ["error", []]);
  });

  it("tells one that reaches into a side's joint by a nanometre, and is silent where it ends at it", () => {
    assert.deepEqual(messages(wall("2 1/8, 20"), CODE), []);
    const [found] = findings(wall("2 1/8 - nm, 20"), CODE);
    assert.match(found!.message, /reaches 0\+ in into the joint to the wall at the left;/);
    assert.equal(found!.severity, "warning");
  });

  it("tells each side, the top and the bottom too", () => {
    const told = messages(wall("47, 47"), CODE);
    assert.equal(told.length, 0, "47 + 10 + 2 leave 1");
    assert.deepEqual(
      messages(wall("48, 48"), CODE).map((message) => /at the (\w+)/.exec(message)![1]),
      ["right", "top"],
    );
  });

  it("tells one that reaches into the other wall's tile at a corner, or into a free edge's trim", () => {
    const corner = SIDES.replace("left wall", "left corner side over");
    const side =
      "wall side {\n size 30 x 60\n right corner back under movement 1/8\n left free\n bottom free\n top free\n lay field {\n bond stack\n joint 1/8\n across full tile from left\n up full course from bottom\n }\n}\n";
    const text = { ...wall("2 1/4, 20", corner), plan: side };
    // The other wall's tile stands 5/16 and the bed of 1/8 before it: 7/16, and the joint.
    assert.match(
      messages(text, CODE)[0]!,
      /reaches 5\/16 in into the tile of side at the left; its outer edge 5\/16 in/,
    );
    const trimmed = SIDES.replace("left wall movement 1/8", "left free trim nose");
    assert.match(
      messages(wall("3, 20", trimmed), CODE)[0]!,
      /reaches 1 1\/8 in into the trim at the left/,
    );
    assert.deepEqual(
      messages(wall("2, 20", SIDES.replace("left wall movement 1/8", "left free")), CODE),
      [],
    );
  });

  it("says nothing of what goes to the floor on purpose, nor of an opening without a frame", () => {
    const door = wall("20").wall!.replace("window sash", "door entry");
    assert.deepEqual(messages({ ...wall("20"), wall: door }, CODE), []);
    const bare = wall("1, 20").wall!.replace("frame nose mitre", "");
    assert.deepEqual(messages({ ...wall("1, 20"), wall: bare }, CODE), []);
  });

  /** The same window on a wall whose top steps down, at 40 in across, from 60 to 40 in. */
  const stepped = (at: string, edges = SIDES): WallText => {
    const outline = "outline 0, 0 to 60, 0 to 60, 40 to 40, 40 to 40, 60 to 0, 60";
    return { ...wall(at, `${outline}\n${edges}`), size: "" };
  };
  // No law of laid walls holds for a frame that lies where no wall is: it is only told.
  const told = (parts: WallText) =>
    run(wallText(parts).replace(/^ *size $/m, ""), ALONE)
      .diagnostics.filter(({ code }) => code === CODE)
      .map(({ message }) => message);

  it("tells one that reaches into a step of the outline by a nanometre, and is silent where it ends at its joint", () => {
    assert.deepEqual(told(stepped("27 7/8, 46")), []);
    assert.deepEqual(told(stepped("27 7/8 + nm, 46")), [
      "the frame of window sash reaches 0+ in into the joint to the wall at a step of the top; " +
        "its outer edge 0+ in further in, where tile may end, is wanted",
    ]);
    assert.deepEqual(told(stepped("45, 27 7/8")), []);
    assert.match(told(stepped("45, 28"))[0]!, /1\/8 in into the joint to the ceiling at a step/);
  });

  it("tells one that reaches past the wall at a step, the short way out of it", () => {
    const past =
      /reaches 1 in past the wall at a step of the top; its outer edge 1 1\/8 in further in/;
    assert.match(told(stepped("29, 46"))[0]!, past);
    assert.match(told(stepped("45, 29"))[0]!, past);
    // Its corner alone: 1 in across, 3 in up.
    assert.match(told(stepped("29, 31"))[0]!, past);
  });

  it("tells one that reaches into the trim along a step", () => {
    const trimmed = SIDES.replace("right wall movement 1/8", "right free trim nose");
    assert.match(told(stepped("27, 46", trimmed))[0]!, /reaches 1 1\/8 in into the trim at a step/);
  });

  it("says nothing of a door's frame on a step of the floor", () => {
    const outline = "outline 0, 0 to 40, 0 to 40, 4 to 60, 4 to 60, 60 to 0, 60";
    const door = "door entry {\n at 44\n size 10 x 40\n movement 1/8\n frame nose mitre\n}";
    assert.deepEqual(told({ size: "", edges: `${outline}\n${SIDES}`, wall: door }), []);
  });
});
