import assert from "node:assert/strict";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { addLeast, isSliverIfAny } from "../../../src/solver/choose/tile-least.js";
import { inches, oneWall, SIXTEENTH } from "./model-plan.js";

const one = oneWall({ face: [inches(6), inches(3)], size: [inches(60), inches(40)] });
const field = fieldOf(one.plan, one.wall, one.lay, SIXTEENTH);
const bottom = { from: inches(10), to: inches(10.5) };
const at = (from: number, to: number) => ({ from: inches(from), to: inches(to) });

function least(from: number, to: number): { settled: boolean; counts: number[] } {
  const tally = { slivers: 0, underHalf: 0, cuts: 0, tiles: 0 };
  const settled = addLeast(field, { left: at(from, to), bottom, many: 3 }, tally, { cells: 0 });
  return { settled, counts: [tally.slivers, tally.underHalf, tally.cuts, tally.tiles] };
}

describe("what a tile comes to at least, wherever in its place it is", () => {
  it("is one whole tile in the clear", () => {
    assert.deepEqual(least(20, 21), { settled: true, counts: [0, 0, 0, 3] });
  });

  it("is a sliver where it always is one, and a tile that is cut where it may be one", () => {
    assert.deepEqual(least(-5.25, -5), { settled: true, counts: [3, 0, 3, 3] });
    // A third of the face is 2 in: from -5 to -3 1/2 a tile shows 7/8 in to 2 3/8 in.
    assert.deepEqual(least(-5, -3.5), { settled: false, counts: [0, 3, 3, 3] });
  });

  it("is cut by a slope along which its pieces are judged by their bounds", () => {
    // The top falls from 40 to 20 in: a tile at 30 in, up to 30 or 33 1/2 in, reaches through it.
    const measured = [
      { at: 0, off: 0 },
      { at: inches(60), off: inches(-20) },
    ];
    const { plan, wall, lay } = oneWall({
      face: [inches(6), inches(3)],
      size: [inches(60), inches(40)],
      sides: { top: { measured, outlined: true } },
    });
    const sloped = fieldOf(plan, wall, lay, SIXTEENTH);
    const tally = { slivers: 0, underHalf: 0, cuts: 0, tiles: 0 };
    const place = { left: at(30, 30), bottom: at(27, 27), many: 1 };
    assert.equal(addLeast(sloped, place, tally, { cells: 0 }), true);
    assert.deepEqual(tally, { slivers: 0, underHalf: 0, cuts: 1, tiles: 1 });
  });

  it("is nothing outside", () => {
    assert.deepEqual(least(-8, -7), { settled: true, counts: [0, 0, 0, 0] });
  });

  it("is a sliver if it is anything where it hardly reaches in", () => {
    assert.equal(isSliverIfAny(field, { left: at(-6.5, -5.5), bottom }, { cells: 0 }), true);
    assert.equal(isSliverIfAny(field, { left: at(-6.5, -2), bottom }, { cells: 0 }), false);
    assert.equal(isSliverIfAny(field, { left: at(-8, -7), bottom }, { cells: 0 }), null);
  });
});
