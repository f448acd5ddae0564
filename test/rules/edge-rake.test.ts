import assert from "node:assert/strict";
import { findings, messages, type WallText } from "./wall-text.js";

const CODE = "edge/rake";

/** A wall whose bottom rises to the right, and whose courses start at its low point unless they are moved. */
const rising = (by: string, more: WallText = {}): WallText => ({
  size: "24 3/8 x 24",
  edges: `left free\nright free\ntop free\nbottom free measured 0: 0, 24 3/8: ${by}`,
  ...more,
});

// BS 5385-1:2018 cl. 7.1.5, quoted in tilersforums.com/threads/tiling-standards.40411: an out-of-level
// top or bottom stays inside one cut course.
describe("edge/rake", () => {
  it("tells a bottom one nanometre higher than its course, and is silent at it", () => {
    assert.deepEqual(messages(rising("3"), CODE), []);
    assert.deepEqual(messages(rising("3 + nm"), CODE), [
      "the bottom is 3+ in out of level and passes out of course 1; at most the 3 in that it has there is wanted",
    ]);
  });

  it("counts what the course still has where the bottom begins", () => {
    // The first course is ripped to 2 in.
    const start = "across full tile from left\nup joint at 2 + 1/16";
    assert.deepEqual(messages(rising("2", { start }), CODE), []);
    assert.match(messages(rising("2 + nm", { start }), CODE)[0]!, /course 1; at most the 2 in/);
  });

  it("looks at the top from its highest point down", () => {
    const top = (by: string): WallText => ({
      size: "24 3/8 x 24",
      edges: `left free\nright free\nbottom free\ntop free measured 0: 0, 24 3/8: ${by}`,
      start: "across full tile from left\nup full course from top",
    });
    assert.deepEqual(messages(top("-3"), CODE), []);
    assert.match(
      messages(top("-3 - nm"), CODE)[0]!,
      /^the top is 3\+ in out of level and passes out of course 8/,
    );
  });

  it("leaves out what a door takes from the bottom", () => {
    const wall = "door way {\n at 12, 0\n size 13 x 20\n movement 1/8\n}";
    const size = "25 x 24";
    assert.deepEqual(messages(rising("5", { wall, size }), CODE), []);
  });

  it("speaks at the edge, as a warning, with its source", () => {
    const [found] = findings(rising("4"), CODE);
    assert.equal(found!.severity, "warning");
    assert.match(found!.source!, /BS 5385-1:2018 cl\. 7\.1\.5/);
  });

  it("may be turned off, and is silenced by an allow in the wall", () => {
    assert.deepEqual(messages(rising("4", { plan: "rules {\n rake off\n}" }), CODE), []);
    const wall = 'allow edge/rake "a curb covers it"';
    assert.equal(findings(rising("4", { wall }), CODE)[0]!.allowed, "a curb covers it");
  });
});
