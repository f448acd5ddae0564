import assert from "node:assert/strict";
import { BADGE_ROOM, badgeBox, badgeLabel } from "../../src/drawing/badge.js";
import { boxWithin } from "../../src/drawing/labels.js";

const badge = { severity: "error", middle: { x: 10, y: 20 }, radius: 5, number: "24" } as const;

describe("a finding's badge", () => {
  it("takes its radius and its outline round its middle", () => {
    const half = 5 * BADGE_ROOM;
    const box = { left: 10 - half, right: 10 + half, top: 20 - half, bottom: 20 + half };
    assert.deepEqual(badgeBox(badge), box);
  });

  it("has room for a number of two figures", () => {
    assert.ok(boxWithin(badgeLabel(badge).box, badgeBox(badge)));
  });
});
