import assert from "node:assert/strict";
import { findings, messages, wallText } from "./wall-text.js";

const CODE = "opening/over-step";

/** A wall 60 wide whose floor is 4 higher right of 30, with a door. */
const text = (door: string, outline = "0, 0 to 30, 0 to 30, 4 to 60, 4 to 60, 90 to 0, 90") =>
  wallText({
    edges: `outline ${outline}\nleft free\nright free\nbottom free\ntop free`,
    wall: door,
  }).replace(/^ *size 24.*$/m, "");
const door = (at: string, more = "") =>
  `door entry {\n at ${at}\n size 20 x 60\n movement 1/8\n${more}\n}`;

describe(CODE, () => {
  it("tells a door that a step of the floor runs under, how high it is and where", () => {
    const [found, ...more] = findings(text(door("20")), CODE);
    assert.equal(
      found!.message,
      "door entry stands across a step of the floor, 4 in up at 30 in; one floor under both jambs is wanted",
    );
    assert.deepEqual([found!.severity, more], ["warning", []]);
    assert.match(text(door("20")).split("\n")[found!.range.start.line]!, /door entry/);
  });

  it("is silent where a jamb stands at the step, and tells it a nanometre further", () => {
    assert.deepEqual(messages(text(door("10")), CODE), []);
    assert.deepEqual(messages(text(door("30")), CODE), []);
    assert.equal(messages(text(door("10 + nm")), CODE).length, 1);
    assert.equal(messages(text(door("30 - nm")), CODE).length, 1);
  });

  it("counts its frame", () => {
    assert.deepEqual(messages(text(door("8", "frame nose butt")), CODE), []);
    assert.match(
      messages(text(door("8 + nm", "frame nose butt")), CODE)[0]!,
      /entry with its frame stands/,
    );
  });

  it("tells a riser beside a slope, which falls", () => {
    const ramp = "0, 0 to 30, 4 to 30, 0 to 60, 0 to 60, 90 to 0, 90";
    assert.match(messages(text(door("20"), ramp), CODE)[0]!, /4 in down at 30 in/);
  });

  it("tells the highest of several steps", () => {
    const stair = "0, 0 to 26, 0 to 26, 1 to 32, 1 to 32, 4 to 60, 4 to 60, 90 to 0, 90";
    assert.match(messages(text(door("20"), stair), CODE)[0]!, /3 in up at 32 in \(and 1 more\)/);
  });

  it("says nothing of a window or of a step in the top, and may be allowed", () => {
    const window = door("20").replace("door entry", "window sash").replace("at 20", "at 20, 10");
    assert.deepEqual(messages(text(window), CODE), []);
    const top = "0, 0 to 60, 0 to 60, 90 to 30, 90 to 30, 80 to 0, 80";
    assert.deepEqual(messages(text(door("20"), top), CODE), []);
    const allowed = findings(
      text(door("20", 'allow opening/over-step "a sill is built up"')),
      CODE,
    );
    assert.equal(allowed[0]!.allowed, "a sill is built up");
  });
});
