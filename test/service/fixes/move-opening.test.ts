import assert from "node:assert/strict";
import { wallText } from "../../rules/wall-text.js";
import { mend, mendsOf } from "./mending.js";

const STEP = "opening/over-step";
const PAST = "trim/past-end";

const stepped = (at: string, more = "") =>
  wallText({
    edges:
      "outline 0, 0 to 30, 0 to 30, 4 to 60, 4 to 60, 90 to 0, 90\nleft free\nright free\nbottom free\ntop free",
    wall: `door entry {\n at ${at}\n size 20 x 60\n movement 1/8\n}\n${more}`,
  }).replace(/^ *size 24.*$/m, "");

const framed = (at: string) =>
  wallText({
    size: "60 x 60",
    edges:
      "left wall movement 1/8\nright wall movement 1/8\nbottom pan movement 1/8\ntop ceiling movement 1/8",
    wall: `window sash {\n at ${at}\n size 10 x 10\n movement 1/8\n frame nose mitre\n}`,
  });

const moves = (text: string, code: string): string[] =>
  mendsOf(text, code)
    .map(({ title }) => title)
    .filter((title) => title.startsWith("Move"));

describe("an opening that stands where it can't", () => {
  it("is moved to either side of a step", () => {
    assert.deepEqual(moves(stepped("16"), STEP), [
      "Move entry 6 in left",
      "Move entry 14 in right",
    ]);
    const left = mend(stepped("16"), STEP, /6 in left/);
    assert.ok(left.text.includes("at 10\n") && !left.codes.includes(STEP));
    const right = mend(stepped("16"), STEP, /14 in right/);
    assert.ok(right.text.includes("at 30\n") && !right.codes.includes(STEP));
  });

  it("is moved only where it is clear of others, and stays on the wall", () => {
    const window = "window sash {\n at 2, 40\n size 10 x 10\n movement 1/8\n}";
    assert.deepEqual(moves(stepped("16", window), STEP), ["Move entry 14 in right"]);
  });

  it("is moved into the tile as far as its frame reaches out", () => {
    assert.deepEqual(moves(framed("1 1/2, 20"), PAST), ["Move sash 5/8 in right"]);
    const moved = mend(framed("48, 48"), PAST, /Move sash 1\/8 in left and 1\/8 in down/);
    assert.ok(moved.text.includes("at 47 7/8, 47 7/8\n"), moved.text);
    assert.ok(!moved.codes.includes(PAST));
  });

  it("is moved out of a step of the outline, the short way", () => {
    const outline = "outline 0, 0 to 60, 0 to 60, 40 to 40, 40 to 40, 60 to 0, 60";
    const text = (at: string) =>
      framed(at)
        .replace("left wall", `${outline}\nleft wall`)
        .replace(/^ *size 60 x 60$/m, "");
    assert.deepEqual(moves(text("29, 45 1/2"), PAST), ["Move sash 1 1/8 in left"]);
    const moved = mend(text("45, 29"), PAST, /Move sash 1 1\/8 in down/);
    assert.ok(moved.text.includes("at 45, 27 7/8\n") && !moved.codes.includes(PAST));
  });
});
