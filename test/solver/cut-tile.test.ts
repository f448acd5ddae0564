import assert from "node:assert/strict";
import { cutTile } from "../../src/solver/cut-tile.js";
import type { Chain, Region } from "../../src/solver/index.js";

const level = (value: number): Chain => ({ at: [0], value: [value] });
const TILE = { left: 0, bottom: 0, right: 60, top: 30 };
const NOTHING = { boxes: [], circles: [] };

function region(more: Partial<Region>): Region {
  return {
    left: level(-100),
    right: level(200),
    bottom: level(-100),
    top: level(200),
    hiddenLeft: null,
    hiddenRight: null,
    hiddenBottom: null,
    hiddenTop: null,
    takeaways: [],
    roundHoles: [],
    steps: [],
    between: { left: -Infinity, right: Infinity },
    bounds: { left: -100, bottom: -100, right: 200, top: 200 },
    ...more,
  };
}

describe("cutTile", () => {
  const sides = {
    left: [10, 0, 60, 0, 60, 30, 20, 30],
    right: [0, 0, 50, 0, 40, 30, 0, 30],
    bottom: [0, 5, 60, 10, 60, 30, 0, 30],
    top: [0, 0, 60, 0, 60, 20, 0, 25],
  } as const;
  const chains: Record<keyof typeof sides, Chain> = {
    left: { at: [0, 30], value: [10, 20] },
    right: { at: [0, 30], value: [50, 40] },
    bottom: { at: [0, 60], value: [5, 10] },
    top: { at: [0, 60], value: [25, 20] },
  };
  for (const side of ["left", "right", "bottom", "top"] as const) {
    it(`scribes a tile to a sloped ${side}`, () => {
      const [part, ...more] = cutTile(TILE, region({ [side]: chains[side] }), NOTHING);
      assert.deepEqual(part?.shape?.outline, sides[side]);
      assert.equal(part.touched, "slope");
      assert.deepEqual(more, []);
    });
  }

  it("says of each part whether the round hole or the slope made its edge", () => {
    const sloped = region({ top: { at: [0, 60], value: [29, 20] } });
    const opening = { left: 28, bottom: -10, right: 32, top: 40 };
    const circle = { left: 45, bottom: -5, right: 55, top: 5 };
    const parts = cutTile(TILE, sloped, { boxes: [opening], circles: [circle] });
    assert.deepEqual(
      parts.map(({ bounds, touched }) => [bounds.left, touched]),
      [
        [0, "slope"],
        [32, "circle"],
      ],
    );
  });

  it("gives no part to a round hole whose polygon stays clear of it, though the circle itself takes its corner", () => {
    // 96 corners on a circle of 35 mm stand up to 0.019 mm inside it; this corner lies 0.005 mm inside.
    const tile = { left: 503_872_500, bottom: 121_443_750, right: 915_828_750, top: 310_356_250 };
    const niche = { left: 290_512_500, bottom: 205_581_250, right: 783_431_250, top: 505_618_750 };
    const valve = { left: 909_637_500, bottom: 66_675_000, right: 979_487_500, top: 136_525_000 };
    const wide = region({
      right: level(2e9),
      top: level(2e9),
      bounds: { left: 0, bottom: 0, right: 2e9, top: 2e9 },
    });
    const [part, ...more] = cutTile(tile, wide, { boxes: [niche], circles: [valve] });
    assert.equal(part!.shape!.outline.length, 12);
    assert.equal(part!.touched, null);
    assert.deepEqual(more, []);
  });
});
