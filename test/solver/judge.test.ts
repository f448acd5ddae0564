import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import type { Bond, Limits } from "../../src/model/index.js";
import { FAULT, judgeOf, judgePiece, type Region, tileLeftOf } from "../../src/solver/index.js";

const IN = NM_PER.inch;
const flat = (value: number) => ({ at: [0], value: [value] });

function region(over: Partial<Region> = {}): Region {
  return {
    left: flat(0),
    right: flat(60 * IN),
    bottom: flat(0),
    top: flat(60 * IN),
    hiddenLeft: null,
    hiddenRight: null,
    hiddenBottom: null,
    hiddenTop: null,
    takeaways: [],
    roundHoles: [],
    steps: [],
    between: { left: -Infinity, right: Infinity },
    bounds: { left: 0, bottom: 0, right: 60 * IN, top: 60 * IN },
    ...over,
  };
}

/** A 6 x 3 in tile: sliver limits 2 in and 1 in, halves 3 in and 1 1/2 in. */
const tile = { face: { across: 6 * IN, up: 3 * IN } };
const STACK: Bond = { kind: "stack" };
const RUNNING: Bond = { kind: "running", p: 1, q: 2 };

function judged(
  bond: Bond,
  size: { left?: number; bottom?: number; width?: number; height?: number; tileLeft?: number },
  where = region(),
  limits: Limits = {},
): number {
  const left = size.left ?? 0;
  const bottom = size.bottom ?? 0;
  const judge = judgeOf(where, { tile, bond } as Parameters<typeof judgeOf>[1], limits);
  const right = left + (size.width ?? 6 * IN);
  return judgePiece(
    judge,
    left,
    bottom,
    right,
    bottom + (size.height ?? 3 * IN),
    size.tileLeft ?? right - 6 * IN,
  );
}

describe("judging a piece's size", () => {
  it("finds nothing in a whole tile", () => {
    assert.equal(judged(STACK, {}), 0);
  });

  it("finds a sliver one nanometre under the limit and none at it", () => {
    assert.equal(judged(RUNNING, { width: 2 * IN - 1 }), FAULT.widthSliver);
    assert.equal(judged(RUNNING, { width: 2 * IN }), 0);
    assert.equal(judged(RUNNING, { height: IN - 1 }), FAULT.heightSliver);
    assert.equal(judged(RUNNING, { height: IN }), FAULT.heightUnderHalf);
  });

  it("holds a stack bond's cuts to half", () => {
    assert.equal(judged(STACK, { width: 3 * IN - 1 }), FAULT.widthUnderHalf);
    assert.equal(judged(STACK, { width: 3 * IN }), 0);
  });

  it("holds a running bond's piece cut at both upright sides to half", () => {
    const between = { left: IN, width: 3 * IN - 1, tileLeft: 0 };
    assert.equal(judged(RUNNING, between), FAULT.widthUnderHalf);
    assert.equal(judged(RUNNING, { ...between, width: 3 * IN }), 0);
  });

  it("adds up the faults of both directions", () => {
    const faults = FAULT.widthSliver + FAULT.heightUnderHalf;
    assert.equal(judged(STACK, { width: IN, height: IN }), faults);
  });

  it("measures a scribed piece at its narrow end", () => {
    const bottom = { at: [0, 6 * IN], value: [0, IN] };
    const height = { height: 3 * IN };
    assert.equal(judged(STACK, height, region({ bottom })), 0);
    const steeper = { at: [0, 6 * IN], value: [0, 2 * IN + 1] };
    assert.equal(judged(STACK, height, region({ bottom: steeper })), FAULT.heightSliver);
  });

  it("measures what another wall's tile leaves to be seen", () => {
    const piece = { width: 3 * IN };
    const hidden = (x: number) => region({ hiddenLeft: flat(x) });
    assert.equal(judged(RUNNING, piece, hidden(IN)), 0);
    assert.equal(judged(RUNNING, piece, hidden(IN + 1)), FAULT.widthSliver);
    assert.equal(judged(RUNNING, piece, hidden(3 * IN)), 0);
  });

  it("follows the plan's own limits", () => {
    const wide: Limits = { sliver: { kind: "length", nm: 2.5 * IN } };
    assert.equal(judged(RUNNING, { width: 2.25 * IN }, region(), wide), FAULT.widthSliver);
    const off: Limits = { sliver: { kind: "off" }, half: { kind: "off" } };
    assert.equal(judged(STACK, { width: 1, height: 1 }, region(), off), 0);
  });
});

describe("the tile that a piece is cut from", () => {
  const lattice = { x: 0, y: 0, face: { across: 10, up: 10 }, joint: 1, p: 1, q: 3 };

  it("begins at or left of the piece, on its course's own phase", () => {
    assert.equal(tileLeftOf(lattice, 1, 0), 0);
    assert.equal(tileLeftOf(lattice, 1, 15), 11);
    assert.equal(tileLeftOf(lattice, 1, -1), -11);
    assert.equal(tileLeftOf(lattice, 2, 4), 4);
    assert.equal(tileLeftOf(lattice, 3, 6), -4);
    assert.equal(tileLeftOf(lattice, 4, 6), 0);
  });
});
