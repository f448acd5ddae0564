import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import {
  movedFit,
  sizedFit,
  tilesNear,
  type TileRow,
  wholeLength,
} from "../../../src/solver/whole-tiles/row-fit.js";

const INCH = NM_PER.inch;

describe("wholeLength", () => {
  it("is k T + (k + 1) J: the trade's two examples (derived)", () => {
    assert.equal(wholeLength({ face: 12 * INCH, joint: INCH / 8 }, 1), 12.25 * INCH);
    assert.equal(wholeLength({ face: 3 * INCH, joint: INCH / 16 }, 4), 12.3125 * INCH);
  });
});

/** Tiles of 4 with joints of 1, from 10. */
const ROW: TileRow = { face: 4, joint: 1, origins: [10] };
const ROOM = { from: 0, to: 100 };

describe("tilesNear", () => {
  it("gives the numbers of tiles nearest to a length first, and never none", () => {
    assert.deepEqual(tilesNear(ROW, 12), [2, 3, 1]);
    assert.deepEqual(tilesNear(ROW, 1), [1]);
  });
});

describe("movedFit", () => {
  it("takes a stretch of whole tiles to the nearest joint", () => {
    assert.deepEqual(movedFit(ROW, { from: 26, to: 37 }, ROOM), { from: 24, to: 35, tiles: 2 });
    assert.deepEqual(movedFit(ROW, { from: 27, to: 38 }, ROOM), { from: 29, to: 40, tiles: 2 });
  });

  it("leaves one that stands right where it is", () => {
    assert.deepEqual(movedFit(ROW, { from: 24, to: 35 }, ROOM), { from: 24, to: 35, tiles: 2 });
  });

  it("shares out what two joints leave: a stretch up to two joints shorter fits", () => {
    assert.deepEqual(movedFit(ROW, { from: 26, to: 36 }, ROOM), { from: 24, to: 34, tiles: 2 });
    assert.deepEqual(movedFit(ROW, { from: 26, to: 35 }, ROOM), { from: 25, to: 34, tiles: 2 });
    assert.equal(movedFit(ROW, { from: 26, to: 34 }, ROOM), null);
    assert.equal(movedFit(ROW, { from: 26, to: 38 }, ROOM), null);
  });

  it("stays in the room, or there is none", () => {
    assert.deepEqual(movedFit(ROW, { from: 26, to: 37 }, { from: 25, to: 60 }), {
      from: 29,
      to: 40,
      tiles: 2,
    });
    assert.equal(movedFit(ROW, { from: 26, to: 37 }, { from: 25, to: 39 }), null);
  });

  it("takes the nearest of the bond's phases", () => {
    const fit = movedFit({ ...ROW, origins: [10, 12] }, { from: 26, to: 37 }, ROOM);
    assert.deepEqual(fit, { from: 26, to: 37, tiles: 2 });
  });
});

describe("sizedFit", () => {
  it("takes the nearest size, round the same middle where it can", () => {
    assert.deepEqual(sizedFit(ROW, { from: 24, to: 37 }, ROOM), { from: 24, to: 35, tiles: 2 });
    assert.deepEqual(sizedFit(ROW, { from: 24, to: 39 }, ROOM), { from: 24, to: 40, tiles: 3 });
  });

  it("takes the next size where the room is too small for the nearest", () => {
    const fit = sizedFit(ROW, { from: 24, to: 39 }, { from: 23, to: 39 });
    assert.deepEqual(fit, { from: 24, to: 35, tiles: 2 });
  });

  it("stands on joints at both ends, whatever it begins with", () => {
    for (let from = 1; from < 30; from++) {
      for (let length = 1; length < 40; length++) {
        const fit = sizedFit(ROW, { from, to: from + length }, ROOM)!;
        assert.equal(fit.from % 5, 14 % 5);
        assert.equal(fit.to - fit.from, wholeLength(ROW, fit.tiles));
      }
    }
  });
});
