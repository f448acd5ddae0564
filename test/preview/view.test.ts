import assert from "node:assert/strict";
import fc from "fast-check";
import type { Scene, WallScene } from "../../src/drawing/index.js";
import {
  ACTUAL_SCALE,
  actualSize,
  bringIn,
  bringNear,
  carriedOver,
  fitWhole,
  fitWidth,
  keptOver,
  pannedBy,
  seenBox,
  settled,
  toPicture,
  zoomedAt,
  type View,
} from "../../src/preview/view.js";

const ROOM = { width: 420, height: 220 };
const BOX = { left: 100, top: -50, right: 900, bottom: 150 };

describe("a view of the picture", () => {
  it("fits a box into the middle of the room, with 10 pixels free at the tighter side", () => {
    assert.deepEqual(fitWhole(BOX, ROOM), { x: 500, y: 50, scale: 0.5, hold: "whole" });
  });

  it("fits a box's width and begins at its top", () => {
    const tall = { left: 0, top: 0, right: 400, bottom: 4000 };
    const view = fitWidth(tall, ROOM);
    assert.equal(view.scale, 1);
    assert.equal(seenBox(view, ROOM).top, -10);
  });

  it("shows an inch of wall as 96 pixels at actual size", () => {
    assert.equal(actualSize(fitWhole(BOX, ROOM)).scale * 25.4, 96);
    assert.equal(ACTUAL_SCALE * 25.4, 96);
  });

  it("moves along with the pointer", () => {
    const view = pannedBy({ x: 10, y: 20, scale: 2, hold: "whole" }, 6, -8);
    assert.deepEqual(view, { x: 7, y: 24, scale: 2, hold: "free" });
  });

  it("zooms about a place that stays where it is", () => {
    const place = fc.double({ min: -400, max: 400, noNaN: true });
    fc.assert(
      fc.property(place, place, fc.double({ min: 0.2, max: 5, noNaN: true }), (x, y, factor) => {
        const view: View = { x: 3, y: 4, scale: 0.7, hold: "free" };
        const before = toPicture(view, ROOM, { x, y });
        const after = toPicture(zoomedAt(view, ROOM, { x, y }, factor), ROOM, { x, y });
        assert.ok(Math.hypot(after.x - before.x, after.y - before.y) < 1e-6);
      }),
    );
  });

  it("can't be lost beside the picture", () => {
    const view: View = { x: 5000, y: 0, scale: 1, hold: "free" };
    assert.deepEqual(keptOver(view, BOX), { ...view, x: 900 });
  });

  it("stays as it is while a fitted box is still seen whole and large", () => {
    const view = fitWhole(BOX, ROOM);
    const little = { ...BOX, right: 890 };
    assert.equal(settled(view, little, ROOM), view);
    const larger = { ...BOX, right: 1300 };
    assert.deepEqual(settled(view, larger, ROOM), fitWhole(larger, ROOM));
    const small = { ...BOX, left: 400, right: 500, top: 40, bottom: 60 };
    assert.deepEqual(settled(view, small, ROOM), fitWhole(small, ROOM));
  });

  it("stays where a person moved it, whatever the picture does", () => {
    const view = pannedBy(fitWhole(BOX, ROOM), 1, 1);
    assert.equal(settled(view, { ...BOX, right: 99999 }, ROOM), view);
  });

  it("moves no more than needed to bring a box into sight", () => {
    const view: View = { x: 0, y: 0, scale: 1, hold: "free" };
    assert.equal(bringIn(view, { left: -5, top: -5, right: 5, bottom: 5 }, ROOM), view);
    const right = bringIn(view, { left: 300, top: 0, right: 320, bottom: 10 }, ROOM);
    assert.deepEqual([right.x, right.y, right.scale], [120, 0, 1]);
    const large = bringIn(view, BOX, ROOM);
    assert.deepEqual(large, { ...fitWhole(BOX, ROOM), hold: "free" });
  });

  it("comes near to a box that could not be made out", () => {
    const view: View = { x: 0, y: 0, scale: 0.01, hold: "whole" };
    const near = bringNear(view, { left: 100, top: 10, right: 140, bottom: 30 }, ROOM);
    assert.deepEqual([near.x, near.y, near.scale], [120, 20, 3]);
    const seen = { left: -5, top: -5, right: 25, bottom: 5 };
    const enough: View = { x: 0, y: 0, scale: 1, hold: "whole" };
    assert.equal(bringNear(enough, seen, ROOM), enough);
  });

  it("follows the wall it is over when another wall pushes it aside", () => {
    const view: View = { x: 1500, y: -10, scale: 1, hold: "free" };
    const from = scene([wall("a", 0, 800), wall("b", 1000, 800)]);
    const to = scene([wall("a", 0, 1800), wall("b", 2000, 800)]);
    assert.equal(carriedOver(view, from, to).x, 2500);
    const below = scene([wall("a", 0, 800), wall("b", 0, 800, 1000)]);
    const moved = scene([wall("a", 0, 800), wall("b", 0, 800, 1700)]);
    assert.equal(carriedOver({ ...view, x: 400, y: 900 }, below, moved).y, 1600);
    const without = scene([wall("a", 0, 1800)]);
    assert.equal(carriedOver(view, from, without), view);
  });
});

function wall(name: string, x: number, width: number, y = 0): WallScene {
  const bare = [0, 0, width, 0, width, -500, 0, -500];
  return { name, at: { x, y }, bare } as unknown as WallScene;
}

function scene(walls: WallScene[]): Scene {
  return { walls } as unknown as Scene;
}
