import assert from "node:assert/strict";
import {
  cutOf,
  layPieces,
  pieceBounds,
  type Lattice,
  type Region,
} from "../../src/solver/index.js";

const level = (value: number) => ({ at: [0], value: [value] });

function region(width: number, height: number, more: Partial<Region> = {}): Region {
  return {
    left: level(0),
    right: level(width),
    bottom: level(0),
    top: level(height),
    hiddenLeft: null,
    hiddenRight: null,
    hiddenBottom: null,
    hiddenTop: null,
    takeaways: [],
    roundHoles: [],
    steps: [],
    between: { left: -Infinity, right: Infinity },
    bounds: { left: 0, bottom: 0, right: width, top: height },
    ...more,
  };
}

function lattice(more: Partial<Lattice> = {}): Lattice {
  return { x: 0, y: 0, face: { across: 60, up: 30 }, joint: 2, p: 0, q: 1, ...more };
}

function cuts(where: Region, on: Lattice): string[] {
  const { pieces, courses } = layPieces(where, on);
  return courses.map((_, c) => {
    const from = pieces.courseStart[c]!;
    const to = pieces.courseStart[c + 1]!;
    return Array.from({ length: to - from }, (_, i) => cutOf(pieces, from + i)).join(" ");
  });
}

describe("layPieces", () => {
  it("lays whole tiles and the cuts at the right and the top", () => {
    assert.deepEqual(cuts(region(150, 80), lattice()), [
      "none none end",
      "none none end",
      "rip rip corner",
    ]);
  });

  it("numbers the lowest course with a piece 1, whichever course the start names", () => {
    const { lattice: found, courses } = layPieces(region(150, 80), lattice({ y: 64 }));
    assert.equal(found.y, 0);
    assert.deepEqual(courses[0], { number: 1, bottom: 0, top: 30 });
  });

  it("shifts every second course of a running bond by half a module", () => {
    const { pieces } = layPieces(region(150, 60), lattice({ p: 1, q: 2 }));
    assert.equal(pieceBounds(pieces, pieces.courseStart[1]!).right, 29);
    assert.equal(pieceBounds(pieces, pieces.courseStart[1]! + 1).left, 31);
  });

  it("makes no piece where a joint meets the side", () => {
    assert.deepEqual(cuts(region(61, 31), lattice()), ["none"]);
  });

  it("scribes the lowest course to a side that slopes", () => {
    const bottom = { at: [0, 150], value: [0, 15] };
    assert.deepEqual(cuts(region(150, 62, { bottom }), lattice()), [
      "scribe scribe scribe",
      "none none end",
    ]);
  });

  it("notches, slots and parts tiles round an opening", () => {
    const opening = { left: 30, bottom: 20, right: 100, top: 55 };
    const takeaways = [{ opening: null as never, box: opening }];
    assert.deepEqual(cuts(region(186, 94, { takeaways }), lattice()), [
      "notch notch none",
      "notch notch none",
      "none none none",
    ]);
  });

  it("bites a round hole out of every tile it reaches, and no other", () => {
    const roundHoles = [{ hole: null as never, box: { left: 51, bottom: 1, right: 71, top: 21 } }];
    assert.deepEqual(cuts(region(186, 62, { roundHoles }), lattice()), [
      "hole hole none",
      "none none none",
    ]);
  });

  it("hides what lies behind the other wall's tile", () => {
    const { pieces } = layPieces(region(186, 30, { hiddenLeft: level(10) }), lattice());
    assert.deepEqual([...pieces.visible.keys()], [0]);
    assert.deepEqual(pieces.visible.get(0)!.shapes[0]!.outline, [10, 0, 60, 0, 60, 30, 10, 30]);
  });

  it("gives the parts of one tile the same column", () => {
    const takeaways = [
      { opening: null as never, box: { left: 20, bottom: -5, right: 40, top: 40 } },
    ];
    const { pieces } = layPieces(region(62, 30, { takeaways }), lattice());
    assert.deepEqual([...pieces.column], [1, 1]);
    assert.deepEqual([...pieces.part], [0, 1]);
  });
});
