import assert from "node:assert/strict";
import { BoardSight } from "../../../src/preview/comparison/board-sight.js";
import type { View } from "../../../src/preview/view.js";

const BOX = { left: 0, top: 0, right: 1000, bottom: 500 };

function sight(box: typeof BOX | null = BOX, room = { width: 520, height: 520 }) {
  const views: View[] = [];
  const board = {
    box,
    room,
    look: (view: View) => void views.push(view),
    placeInRoom: (place: { readonly x: number; readonly y: number }) => place,
  };
  return { sight: new BoardSight(board, () => undefined), views, board };
}

describe("how a board is looked at", () => {
  it("begins with all of the picture", () => {
    const { sight: looking, views } = sight();
    looking.begin();
    assert.deepEqual(views.at(-1), { x: 500, y: 250, scale: 0.5, hold: "whole" });
  });

  it("keeps zoom and place over an update, until another picture begins", () => {
    const { sight: looking, views } = sight();
    looking.begin();
    looking.zoom(2);
    looking.panBy(50, 0);
    const moved = views.at(-1)!;
    assert.equal(moved.scale, 1);
    assert.equal(moved.x, 450);
    looking.settle();
    assert.deepEqual(views.at(-1), moved);
    looking.begin();
    assert.equal(views.at(-1)!.scale, 0.5);
  });

  it("fits, fits the width and shows the actual size", () => {
    const { sight: looking, views } = sight();
    looking.begin();
    looking.actualSize();
    assert.ok(Math.abs(views.at(-1)!.scale - 96 / 25.4) < 1e-9);
    looking.fit("width");
    assert.equal(views.at(-1)!.scale, 0.5);
    looking.fit("whole");
    assert.equal(views.at(-1)!.hold, "whole");
  });

  it("does nothing while nothing is drawn, or there is no room", () => {
    for (const { sight: looking, views } of [sight(null), sight(BOX, { width: 0, height: 0 })]) {
      looking.begin();
      looking.zoom(2);
      looking.panBy(1, 1);
      looking.actualSize();
      assert.deepEqual(views, []);
    }
  });
});
