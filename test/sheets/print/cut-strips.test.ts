import assert from "node:assert/strict";
import {
  cutStrips,
  MOST_STRIPS,
  OVERLAP,
  truePoints,
} from "../../../src/sheets/print/cut-strips.js";
import type { Pole } from "../../../src/sheets/index.js";

const INCH = 25_400_000;

function poleOf(inches: number): Pole {
  const marks = Array.from({ length: inches + 1 }, (_, i) => ({
    at: i * INCH,
    what: `mark ${i}`,
    reading: `${i} in`,
    weight: "course" as const,
  }));
  const ends = { from: 0, to: inches * INCH };
  return { kind: "pole", caption: "", direction: "up", ...ends, marks };
}

describe("the strips of a story pole", () => {
  it("are in true size: an inch is 72 points", () => {
    assert.equal(truePoints(INCH), 72);
    assert.equal(truePoints(304_800_000), 12 * 72);
  });

  it("are one where the pole fits on a sheet", () => {
    const [strip, ...others] = cutStrips(poleOf(9), 700);
    assert.deepEqual(others, []);
    assert.equal(strip!.length, 9 * 72);
    assert.equal(strip!.marks.length, 10);
  });

  it("each lie over the end of the one before, so that every mark falls on itself", () => {
    const strips = cutStrips(poleOf(96), 650);
    assert.ok(strips.length > 5);
    const seen = new Set<string>();
    strips.forEach((strip, i) => {
      assert.ok(strip.length <= 650);
      const foot = i * (650 - OVERLAP);
      for (const { up, mark } of strip.marks) {
        assert.ok(Math.abs(foot + up - truePoints(mark.at)) < 1e-6);
        seen.add(mark.what);
      }
    });
    assert.equal(seen.size, 97, "no mark is left out");
    const last = strips.at(-1)!;
    assert.ok(Math.abs((strips.length - 1) * (650 - OVERLAP) + last.length - 96 * 72) < 1e-6);
    assert.ok(last.length > OVERLAP, "the last one is more than the overlap");
  });

  it("are none where a pole would take too many", () => {
    assert.deepEqual(cutStrips(poleOf(12 * MOST_STRIPS), 650), []);
  });
});
