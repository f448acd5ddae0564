import assert from "node:assert/strict";
import { doublePieceArea } from "../../../src/solver/index.js";
import { tapersOf } from "../../../src/takeoff/cuts/tapers.js";
import type { CutPiece, Taper } from "../../../src/takeoff/index.js";
import { cutWall, mm } from "../../support/cut-wall.js";
import { ANY, randomSketch } from "../../support/random-sketch.js";
import { printSketch } from "../../support/print-sketch.js";
import { takeText } from "../../support/takeoff-text.js";

const PLANS = 80;

function tapers(sides: readonly string[], label: string, size = "204 x 102"): readonly Taper[] {
  const cut = cutWall({ size, wall: sides.map((side) => `${side} movement 0`) });
  return tapersOf(cut.laid, cut.piece(label).index);
}

describe("the tapers of a piece", () => {
  it("say what is left at both ends, measured from the opposite side", () => {
    // The pan rises 20 mm to the right, so course 1 stands on its left end.
    const pan = ["bottom pan measured 0: 0, 200: 20"];
    assert.deepEqual(tapers(pan, "B-01-01"), [
      { side: "bottom", from: 0, to: mm(100), first: mm(50), last: mm(40) },
    ]);
    assert.deepEqual(tapers(["top ceiling measured 0: 0, 200: -20"], "B-02-01"), [
      { side: "top", from: 0, to: mm(100), first: mm(50), last: mm(40) },
    ]);
    assert.deepEqual(tapers(["left wall measured 0: 0, 100: 10"], "B-01-01"), [
      { side: "left", from: 0, to: mm(50), first: mm(100), last: mm(95) },
    ]);
    // This one leaves the wall's end 2 mm past the tile, so it enters the tile 20 mm up.
    assert.deepEqual(tapers(["right wall measured 0: 0, 100: -10"], "B-01-02"), [
      { side: "right", from: mm(20), to: mm(50), first: mm(100), last: mm(97) },
    ]);
  });

  it("are two where the side bends within the piece", () => {
    assert.deepEqual(tapers(["bottom pan measured 0: 0, 40: 8, 200: 8"], "B-01-01"), [
      { side: "bottom", from: 0, to: mm(40), first: mm(50), last: mm(42) },
      { side: "bottom", from: mm(40), to: mm(100), first: mm(42), last: mm(42) },
    ]);
  });

  it("are none of a piece that is cut square, notched or drilled", () => {
    const cut = cutWall({
      size: "254 x 102",
      wall: [
        "hole arm at 230, 75 across 20",
        "window sash {\nat 60, 30\nsize 60 x 72\nmovement 0\n}",
      ],
    });
    for (const label of ["B-01-01", "B-01-03", "B-02-03"]) {
      assert.deepEqual(tapersOf(cut.laid, cut.piece(label).index), [], label);
    }
  });

  it(`take from the bounds what the piece lacks, on ${PLANS} random plans`, () => {
    let checked = 0;
    for (let seed = 0; seed < PLANS; seed++) {
      const text = printSketch(randomSketch(seed, { ...ANY, measured: 0.8 }), "mm");
      const { solved, taken } = takeText(text);
      taken.walls.forEach(({ pieces }, n) => {
        for (const piece of pieces.filter(isTaperedOnce)) {
          checked++;
          const area = doublePieceArea(solved.walls[n]!.lays[0]!.pieces, piece.index);
          const told = `seed ${seed}: ${piece.label}\n${text}`;
          assert.equal(Number(doubleBounds(piece) - area), Number(doubleWedges(piece)), told);
        }
      });
    }
    assert.ok(checked > 5 * PLANS, `${checked} pieces`);
  });
});

/** Cut along one side alone, so that the wedges don't overlap. */
function isTaperedOnce({ cut }: CutPiece): boolean {
  const sides = new Set(cut.tapers.map(({ side }) => side));
  return sides.size === 1 && cut.notches.length === 0 && cut.holes.length === 0;
}

function doubleBounds({ cut: { box } }: CutPiece): bigint {
  return 2n * BigInt(box.right - box.left) * BigInt(box.top - box.bottom);
}

/** Twice the area between the tapers and the side of the bounds that they are on. */
function doubleWedges({ cut: { box, tapers } }: CutPiece): bigint {
  return tapers.reduce((sum, { side, from, to, first, last }) => {
    const isLevel = side === "bottom" || side === "top";
    const full = isLevel ? box.top - box.bottom : box.right - box.left;
    return sum + BigInt(to - from) * BigInt(full - first + full - last);
  }, 0n);
}
