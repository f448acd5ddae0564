import assert from "node:assert/strict";
import { FATE, matchPieces } from "../../src/compare/match-pieces.js";
import { edited, told, WALL } from "./wall.js";

function match(...edits: readonly (readonly [string, string])[]) {
  const [before, after] = [WALL, edited(WALL, ...edits)].map((text) => told(text).solved.walls[0]!);
  return matchPieces({ before: before!, after: after! })[0]!;
}

function count(fates: Uint8Array, fate: number): number {
  return fates.filter((each) => each === fate).length;
}

describe("matchPieces", () => {
  it("matches by the place in the course, not in the list", () => {
    // A course slides in at the bottom: every number changes, and no course is new but that one.
    const { fates, twin, shift } = match(["full course from bottom", "joint at 3 1/16"]);
    assert.deepEqual(shift, { up: -28575000, across: [0] });
    assert.ok(twin[0]! >= 0);
    // Of four courses over it, two pieces are cut by the niche now.
    assert.equal(count(fates.before, FATE.moved), 36);
  });

  it("has every piece kept where both have the same ones", () => {
    const before = told(WALL).solved.walls[0]!;
    const { fates, twin, shift, anew } = matchPieces({ before, after: { ...before } })[0]!;
    assert.deepEqual([shift, anew], [{ up: 0, across: [0] }, false]);
    assert.ok(twin.every((each, i) => each === i));
    assert.equal(count(fates.before, FATE.kept), twin.length);
    assert.deepEqual(fates.after, fates.before);
    assert.deepEqual(match(), { ...match(), fates, twin, shift, anew });
  });

  it("matches columns though some are taken by an opening", () => {
    const { twin, fates } = match(["at 16 5/8, 8 3/8", "at 4 1/4, 8 3/8"]);
    // In course 3 the niche's two tiles come back, and two others go; the rest keeps its place.
    assert.equal(count(fates.before, FATE.apart), 2);
    assert.equal(count(fates.after, FATE.apart), 2);
    assert.equal(count(fates.before, FATE.kept), 56);
    assert.equal(new Set(twin.filter((i) => i >= 0)).size, 56);
  });

  it("lets tiles drift where the joint changed, and says no shift", () => {
    const { shift, anew } = match(["joint 1/8\n", "joint 3/16\n"]);
    assert.deepEqual([shift, anew], [null, false]);
  });

  it("recognises no piece of a tile whose face is quite another", () => {
    const { anew, twin } = match(["face 4 x 4", "face 4 x 6"]);
    assert.ok(anew);
    assert.ok(twin.every((each) => each === -1));
    assert.equal(match(["face 4 x 4", "face 4 x 4 1/4"]).anew, false);
  });

  it("has no pieces of a wall that isn't there", () => {
    const after = told(WALL).solved.walls[0]!;
    const { fates, lays } = matchPieces({ before: null, after })[0]!;
    assert.deepEqual([lays.before, fates.before.length], [null, 0]);
    assert.equal(count(fates.after, FATE.apart), 58);
  });
});
