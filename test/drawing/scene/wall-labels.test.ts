import assert from "node:assert/strict";
import { badgeBox } from "../../../src/drawing/badge.js";
import { boxesOverlap, boxWithin } from "../../../src/drawing/labels.js";
import type { FindingGroup } from "../../../src/drawing/scene/finding-groups.js";
import { placeInner } from "../../../src/drawing/scene/wall-labels.js";

const bounds = { left: 0, top: 0, right: 400, bottom: 300 };
const boxOf = (x: number, y: number, side: number) => ({
  left: x,
  top: y,
  right: x + side,
  bottom: y + side,
});
const named = (name: string, x: number, y: number, side: number, inside: boolean) => ({
  wordings: [[`window ${name}`, "4 × 4"], [`window ${name}`]],
  inside: inside ? boxOf(x, y, side) : null,
  around: boxOf(x, y, side),
});
const group: FindingGroup = { number: "1", wall: "w", severity: "error", findings: [] };

describe("names and badges inside a wall", () => {
  it("stand inside what they name where there is room", () => {
    const { labels, leaders } = placeInner([named("a", 100, 100, 150, true)], [], bounds, 10);
    assert.deepEqual(
      labels.map(({ text }) => text),
      ["window a", "4 × 4"],
    );
    assert.ok(labels.every(({ box }) => boxWithin(box, boxOf(100, 100, 150))));
    assert.deepEqual(leaders, []);
  });

  it("stand beside it with a leader where there is not, clear of holes", () => {
    const hole = named("hole", 200, 150, 30, false);
    const { labels, leaders } = placeInner([hole], [], bounds, 10);
    assert.equal(leaders.length, 1);
    assert.ok(labels.every(({ box }) => !boxesOverlap(box, hole.around)));
  });

  it("are told below the wall where there is no room at all", () => {
    const small = { left: 0, top: 0, right: 20, bottom: 20 };
    const { labels, unplaced } = placeInner([named("a", 5, 5, 3, true)], [], small, 10);
    assert.deepEqual(labels, []);
    assert.deepEqual(unplaced, ["window a, 4 × 4"]);
  });

  it("leave badges over their pieces, and beside them when those are taken", () => {
    const wishes = [0, 1, 2].map(() => ({ group, around: boxOf(100, 100, 20) }));
    const { badges } = placeInner([], wishes, bounds, 10);
    assert.equal(badges.length, 3);
    assert.deepEqual(badges[0]!.middle, { x: 110, y: 110 });
    for (const [i, one] of badges.entries()) {
      for (const other of badges.slice(i + 1)) {
        assert.ok(!boxesOverlap(badgeBox(one), badgeBox(other)));
      }
    }
  });

  it("show each number once before any a second time, and sixty badges at most", () => {
    const late: FindingGroup = { ...group, number: "2" };
    const many = Array.from({ length: 90 }, (_, i) => ({
      group,
      around: boxOf((i % 12) * 32, Math.floor(i / 12) * 32, 20),
    }));
    const wishes = [...many, { group: late, around: boxOf(380, 280, 10) }];
    const { badges } = placeInner([], wishes, bounds, 10);
    assert.ok(badges.length <= 60);
    assert.ok(badges.some(({ number }) => number === "2"));
  });
});
