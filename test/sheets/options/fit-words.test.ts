import assert from "node:assert/strict";
import { exactLength } from "../../../src/measure/index.js";
import {
  holeFitWords,
  openingFitWords,
  restWords,
  stopWords,
} from "../../../src/sheets/options/fit-words.js";
import { holeFits, openingFits, stopHeights } from "../../../src/solver/index.js";
import { bench, RUNNING, STATED } from "./bench.js";

const print = (nm: number): string => exactLength(nm, "inch");

function opening(text: string): string[] {
  const { wall } = bench(text);
  return openingFitWords(openingFits(wall, wall.lays[0]!, wall.wall.openings[0]!)!, print);
}

describe("the words of what keeps whole tiles", () => {
  it("give an opening that can stay as large as it is a place, and the size that fits exactly", () => {
    // Tiles end at 6 1/8, 12 1/4 and 3 1/8, 6 1/4, 9 3/8, 12 1/2; with its joints of 1/16 it takes 6 1/8,
    // which is 1/8 short of 6 + 2 J across and 1/4 short of 2 x 3 + 3 J up.
    assert.deepEqual(opening(STATED), [
      "off the joints; on them at 12 3/8, 12 11/16",
      "with whole joints round it at 12 5/16, 12 9/16, size 6 1/8 x 6 1/4 (1 tile x 2 courses)",
    ]);
  });

  it("give one that can't a size as well", () => {
    const [words, ...more] = opening(STATED.replace("size 6 x 6", "size 7 1/2 x 6"));
    assert.match(
      words!,
      /^off the joints; on them at .*, size 6 1\/8 x 6 1\/4 \(1 tile x 2 courses\)$/,
    );
    assert.deepEqual(more, []);
  });

  it("say in which courses of a running bond the upright sides meet joints", () => {
    assert.ok(
      opening(RUNNING).includes(
        "its upright sides meet joints in 1 of 2 courses (5): the bond shifts the others",
      ),
    );
  });

  it("say so where it is on the joints, and where no place is free", () => {
    const on = STATED.replace("at 13, 13", "at 12 5/16, 12 9/16").replace(
      "size 6 x 6",
      "size 6 1/8 x 6 1/4",
    );
    assert.deepEqual(opening(on), ["on the joints"]);
    const blocked = STATED.replace("hole tap at 9, 5", "hole tap at 12 1/4, 17");
    assert.deepEqual(opening(blocked), ["off the joints; no place on them is free for it"]);
  });

  it("tell a hole's places and the wall's heights", () => {
    const { wall } = bench(STATED);
    const [lay] = wall.lays;
    assert.deepEqual(holeFitWords(holeFits(lay!, wall.wall.holes[0]!), print), [
      "middle of a tile at 9 1/4, 4 3/4",
      "middle of a joint at 9 1/4, 6 5/16",
    ]);
    assert.equal(
      stopWords(stopHeights(wall, lay!)!, print),
      "its last course would be whole with the top at 22 or 25 1/8",
    );
    assert.equal(
      stopWords({ isWhole: true, below: 1, above: 2 }, print),
      "its last course is whole as it is",
    );
    assert.equal(
      stopWords({ isWhole: false, below: null, above: 25_400_000 }, print),
      "its last course would be whole with the top at 1",
    );
  });

  it("tell at which heights courses are whole over a bench or under a soffit", () => {
    const IN = 25_400_000;
    const rest = { edge: "top", isWhole: false, below: 17 * IN, above: 20 * IN } as const;
    assert.deepEqual(restWords(rest, print), [
      "courses would begin whole over it with its top at 17 or 20",
    ]);
    assert.deepEqual(restWords({ ...rest, edge: "bottom", below: null }, print), [
      "courses would end whole under it with its bottom at 20",
    ]);
    assert.deepEqual(restWords({ ...rest, below: null, above: null }, print), []);
    assert.deepEqual(restWords({ ...rest, isWhole: true }, print), ["courses begin whole over it"]);
  });
});
