import assert from "node:assert/strict";
import { type End, handOver, shareOut } from "../../../src/takeoff/tiles/hand-over.js";
import { randomFrom, type Random } from "../../support/random.js";

const CASES = 2000;

function ends(random: Random, most: number): End[] {
  return Array.from({ length: random.integer(0, most) }, () => ({
    size: random.integer(1, 20),
    course: random.integer(1, 6),
  }));
}

/** The most pairs that there are, by trying every partner of the first end in turn. */
function mostPairs(all: readonly End[], suits: (a: End, b: End) => boolean): number {
  const [first, ...others] = all;
  if (!first) return 0;
  return others.reduce(
    (most, other, k) =>
      suits(first, other)
        ? Math.max(
            most,
            1 +
              mostPairs(
                others.filter((_, n) => n !== k),
                suits,
              ),
          )
        : most,
    mostPairs(others, suits),
  );
}

function checkPairs(pairs: readonly (readonly [End, End])[], room: number): void {
  const used = pairs.flat();
  assert.equal(new Set(used).size, used.length, "each end is in one pair at most");
  for (const [a, b] of pairs)
    assert.ok(a.size + b.size <= room, `${a.size} + ${b.size} <= ${room}`);
}

describe("ends that share tiles", () => {
  it(`are in as many pairs as there can be, in ${CASES} cases against every other way`, () => {
    const random = randomFrom(1);
    for (let n = 0; n < CASES; n++) {
      const all = ends(random, 8);
      const room = random.integer(5, 30);
      const pairs = shareOut(all, room);
      checkPairs(pairs, room);
      const most = mostPairs(all, (a, b) => a.size + b.size <= room);
      assert.equal(pairs.length, most, JSON.stringify({ all, room }));
    }
  });

  it(`are so where the left ones suit the right ones alone, in ${CASES} cases`, () => {
    const random = randomFrom(2);
    for (let n = 0; n < CASES; n++) {
      const [takers, givers] = [ends(random, 4), ends(random, 4)];
      const room = random.integer(5, 30);
      const pairs = handOver(takers, givers, room);
      checkPairs(pairs, room);
      assert.ok(pairs.every(([a, b]) => takers.includes(a) && givers.includes(b)));
      const left = new Set(takers);
      const most = mostPairs(
        [...takers, ...givers],
        (a, b) => left.has(a) !== left.has(b) && a.size + b.size <= room,
      );
      assert.equal(pairs.length, most, JSON.stringify({ takers, givers, room }));
    }
  });

  it("take an end of their own course where they can", () => {
    const large = [1, 2, 3].map((course) => ({ size: 60, course }));
    const small = [3, 2, 1].map((course) => ({ size: 30, course }));
    for (const [a, b] of shareOut([...large, ...small], 98)) assert.equal(a.course, b.course);
    const alike = [1, 1, 2, 2].map((course) => ({ size: 40, course }));
    for (const [a, b] of shareOut(alike, 98)) assert.equal(a.course, b.course);
  });

  it("else the nearest", () => {
    const large = [2, 8].map((course) => ({ size: 60, course }));
    const small = [9, 5, 3].map((course) => ({ size: 30, course }));
    assert.deepEqual(
      handOver(large, small, 98).map(([a, b]) => [a.course, b.course]),
      [
        [2, 3],
        [8, 9],
      ],
    );
  });

  it("share a tile even when nothing but the kerf is left between them", () => {
    const two = [
      { size: 49, course: 1 },
      { size: 49, course: 1 },
    ];
    assert.equal(shareOut(two, 98).length, 1);
    assert.equal(shareOut(two, 97).length, 0);
  });
});
