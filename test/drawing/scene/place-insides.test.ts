import assert from "node:assert/strict";
import type { InsideNet } from "../../../src/drawing/scene/inside-scenes.js";
import { placeInsides } from "../../../src/drawing/scene/place-insides.js";
import type { WallScene } from "../../../src/drawing/index.js";

const net = (right: number): InsideNet => ({
  faces: [{ at: { x: 1, y: 2 } } as WallScene],
  room: { left: 0, top: 0, right, bottom: 50 },
});
const room = { left: 0, top: 0, right: 300, bottom: 200 };

describe("the place of folded-out insides", () => {
  it("is below the walls, side by side, in as many rows as it takes", () => {
    const { faces, room: all } = placeInsides([net(100), net(100), net(100)], room, 10);
    // From 4, which is the pad round a wall, with 20 between two; the third would end at 344.
    assert.deepEqual(
      faces.map(({ at }) => at),
      [
        { x: 5, y: 222 },
        { x: 125, y: 222 },
        { x: 5, y: 292 },
      ],
    );
    assert.deepEqual(all, { left: 0, top: 0, right: 300, bottom: 340 });
  });

  it("takes no room where there are none", () => {
    assert.deepEqual(placeInsides([], room, 10), { faces: [], room });
  });
});
