import assert from "node:assert/strict";
import { wallText, type WallText } from "../../rules/wall-text.js";
import { mend, mendsOf } from "./mending.js";

const NEAR = "hole/near-edge";
const RIM = "hole/plate-rim";
const SOFT = "hole/soft-joint";

/** Tile of 6 x 3 in with joints of 1/8 in: course 2 stands from 3 1/8 to 6 1/8. */
const plan = (hole: string, more: WallText = {}) =>
  wallText({ size: "60 x 30", wall: `  hole valve at ${hole}`, ...more });
const moves = (text: string, code: string) =>
  mendsOf(text, code)
    .map(({ title }) => title)
    .filter((title) => title.startsWith("Move"));

describe("a hole near its tile's edge", () => {
  it("is moved as far as it takes, within its tile", () => {
    // A tile from 6 1/8 to 12 1/8 across and 3 1/8 to 6 1/8 up: 1/2 in to its edges leaves 7 1/8 and 4 1/8.
    const { text, codes } = mend(
      plan("6 7/8, 4 across 1"),
      NEAR,
      /off the tile's edge: 7 1\/8 in, 4 1\/8 in$/,
    );
    assert.ok(text.includes("hole valve at 7 1/8, 4 1/8 across 1\n"), text);
    assert.ok(!codes.includes(NEAR));
  });

  it("is moved along the joint that it lies across", () => {
    const { text, codes } = mend(plan("6 1/16, 3 7/8 across 1"), NEAR, /6 1\/16 in, 4 1\/8 in$/);
    assert.ok(text.includes("hole valve at 6 1/16, 4 1/8 across 1\n"), text);
    assert.ok(!codes.includes(NEAR));
  });

  it("stays where its tile leaves no such place", () => {
    assert.deepEqual(moves(plan("9, 4 5/8 across 2 1/2"), NEAR), []);
  });

  it("stays where the start is chosen round it", () => {
    assert.deepEqual(moves(plan("6 7/8, 4 across 1", { start: "" }), NEAR), []);
  });
});

describe("a plate whose rim runs in a joint", () => {
  it("is moved so that it lies on tile, a lap past the joint, the nearest way first", () => {
    // Its bottom is at 6 1/8 + 1/16, in the bed joint over course 2; 1/4 in past it is 6 1/2, or 5 7/8.
    const text = plan("9, 7 3/16 across 1 plate 3 x 2");
    assert.deepEqual(moves(text, RIM), [
      "Move valve so that its plate's rim lies on tile: 9 in, 6 7/8 in",
      "Move valve so that its plate's rim lies on tile: 9 in, 7 1/2 in",
    ]);
    const mended = mend(text, RIM, /7 1\/2 in/);
    assert.ok(mended.text.includes("hole valve at 9, 7 1/2 across 1 plate 3 x 2\n"));
    assert.ok(!mended.codes.includes(RIM));
  });
});

describe("a hole on a soft joint", () => {
  const lay = "movement joint over course 4\nmovement joint at 30";

  it("is moved off it, its plate with it, the nearest way first", () => {
    // The level one lies from 12 3/8 to 12 1/2: a plate of 4 in is 1/4 in past it at 10 1/8 and at 14 3/4.
    const text = plan("10, 11 across 2 plate 4", { lay });
    assert.deepEqual(moves(text, SOFT), [
      "Move valve off the soft joint: 10 in, 10 1/8 in",
      "Move valve off the soft joint: 10 in, 14 3/4 in",
    ]);
    const mended = mend(text, SOFT, /10 1\/8 in$/);
    assert.ok(!mended.codes.includes(SOFT));
  });

  it("is moved off a crossing both ways", () => {
    const text = plan("30 1/2, 12 across 2", { lay });
    const mended = mend(text, SOFT, /^Move/);
    assert.ok(!mended.codes.includes(SOFT), mended.text);
  });
});
