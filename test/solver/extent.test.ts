import assert from "node:assert/strict";
import { visibleExtent, type Box, type Region } from "../../src/solver/index.js";

const level = (value: number) => ({ at: [0], value: [value] });
const region: Region = {
  left: level(0),
  right: level(300),
  bottom: { at: [0, 300], value: [0, 30] },
  top: level(200),
  hiddenLeft: level(25),
  hiddenRight: null,
  hiddenBottom: null,
  hiddenTop: null,
  takeaways: [],
  roundHoles: [],
  steps: [],
  between: { left: -Infinity, right: Infinity },
  bounds: { left: 0, bottom: 0, right: 300, top: 200 },
};

function seen(piece: Box): { width: number; height: number } | null {
  const extent = visibleExtent(region, piece);
  return extent && { width: extent.width, height: extent.height };
}

describe("what is seen of a piece", () => {
  it("is its own width and height where nothing covers or scribes it", () => {
    const piece = { left: 100, bottom: 100, right: 160, top: 130 };
    assert.deepEqual(seen(piece), { width: 60, height: 30 });
  });

  it("is measured at the narrow end where a side slopes", () => {
    const piece = { left: 100, bottom: 10, right: 160, top: 60 };
    assert.deepEqual(seen(piece), { width: 60, height: 44 });
  });

  it("leaves out what the other wall's tile covers", () => {
    const piece = { left: 0, bottom: 100, right: 60, top: 130 };
    assert.deepEqual(seen(piece), { width: 35, height: 30 });
  });

  it("is nothing for a piece wholly behind the other wall's tile", () => {
    assert.equal(seen({ left: 0, bottom: 100, right: 25, top: 130 }), null);
  });
});
