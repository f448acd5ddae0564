import assert from "node:assert/strict";
import { findings, messages, type WallText } from "./wall-text.js";

const CODE = "movement/too-far";

const field = (size: string, more: WallText = {}): WallText => ({
  face: "24 x 12",
  size,
  ...more,
});
const OVER_PAN = "left free\nright free\ntop free\nbottom pan movement 1/8";

// NTCA Reference Manual 2024-25 p. 23: 20 to 25 ft in an interior, 8 to 12 ft in moisture or sun.
describe("movement/too-far", () => {
  it("tells a wall one nanometre wider or higher than 25 ft, and is silent at it", () => {
    assert.deepEqual(messages(field("25ft x 8ft"), CODE), []);
    assert.deepEqual(messages(field("25ft + nm x 8ft"), CODE), [
      "the tile is 300+ in wide without a soft joint in it; at most 300 in is wanted",
    ]);
    assert.match(messages(field("8ft x 25ft + nm"), CODE)[0]!, /300\+ in high/);
  });

  it("holds a wall over a pan or a tub to 12 ft", () => {
    assert.deepEqual(messages(field("12ft x 8ft", { edges: OVER_PAN }), CODE), []);
    assert.deepEqual(messages(field("12ft + nm x 8ft", { edges: OVER_PAN }), CODE), [
      "the tile is 144+ in wide without a soft joint in it; at most 144 in over a pan or a tub is wanted",
    ]);
    const tub = OVER_PAN.replace("pan", "tub");
    assert.equal(messages(field("13ft x 8ft", { edges: tub }), CODE).length, 1);
  });

  it("counts the tile between the soft joints at its sides", () => {
    const edges = "left wall movement 1/8\nright wall movement 1/8\ntop free\nbottom free";
    assert.deepEqual(messages(field("25ft + 1/4 x 8ft", { edges }), CODE), []);
  });

  it("speaks at the wall, as a warning, with its source", () => {
    const [found] = findings(field("26ft x 8ft"), CODE);
    assert.equal(found!.severity, "warning");
    assert.match(found!.source!, /NTCA Reference Manual/);
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    const rules = (text: string): WallText =>
      field("4500mm x 2m", { plan: `rules {\n ${text}\n}`, edges: OVER_PAN });
    assert.deepEqual(messages(rules("apart 4500mm"), CODE), []);
    assert.equal(messages(rules("apart 4499mm"), CODE).length, 1);
    assert.deepEqual(messages(rules("apart off"), CODE), []);
  });

  it("is silenced by an allow that says where the joint is", () => {
    const wall = 'allow movement/too-far "a soft joint at 13 ft"';
    assert.equal(
      findings(field("26ft x 8ft", { wall }), CODE)[0]!.allowed,
      "a soft joint at 13 ft",
    );
  });

  const parted = (lay: string): WallText => field("40ft x 8ft", { lay });

  it("counts from soft joint to soft joint, and is silent where each is near enough", () => {
    // Tiles of 24 in, joints of 1/8 in: the joint nearest to 20 ft begins at 10 x 24 1/8 - 1/8.
    assert.deepEqual(messages(parted("movement joint at 20ft"), CODE), []);
    assert.deepEqual(messages(parted("movement joint at 10ft"), CODE), [
      "the tile is 359 3/8 in wide from the soft joint at 120 9/16 in to its right; at most 300 in is wanted",
    ]);
    assert.deepEqual(messages(parted("movement joint at 30ft"), CODE), [
      "the tile is 361 3/4 in wide from its left to the soft joint at 361 13/16 in; at most 300 in is wanted",
    ]);
  });

  it("tells each stretch that is too far, and of those within each other the longest", () => {
    const two = field("80ft x 8ft", { lay: "movement joint at 40ft" });
    assert.equal(messages(two, CODE).length, 2);
    const lay = "covers bottom to 36\nmovement joint at 40ft";
    const wall = "lay field {\n bond stack\n joint 1/8\n}";
    assert.match(
      messages(field("80ft x 8ft", { lay, wall }), CODE).join(),
      /^the tile is 960 in wide without/,
    );
  });

  it("counts up as well as across", () => {
    const high = (lay: string) => messages(field("8ft x 40ft", { lay }), CODE);
    assert.deepEqual(high("movement joint over course 20"), []);
    assert.deepEqual(high("movement joint over course 2"), [
      "the tile is 455 3/4 in high from the soft joint over course 2 to its top; at most 300 in is wanted",
    ]);
  });

  it("is told as ever where courses are set: a joint can be left soft until it is grouted", () => {
    const lay = "set courses 1 to 2";
    assert.match(messages(field("26ft x 8ft", { lay }), CODE)[0]!, /is wanted$/);
  });
});
