import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import type { CutPiece } from "../../../src/compare/comparison.js";
import { Lengths } from "../../../src/compare/words/lengths.js";
import {
  apartWords,
  exchangeWords,
  movedWords,
  onWallWords,
  recutWords,
  shiftWords,
} from "../../../src/compare/words/piece-words.js";

const INCH = NM_PER.inch;

describe("the words of pieces", () => {
  const lengths = new Lengths("inch");
  const cutTo = (width: number, place = "at the left end"): CutPiece => ({
    cut: width === 6 ? "none" : "end",
    width: { least: width * INCH, most: width * INCH },
    height: { least: 3 * INCH, most: 3 * INCH },
    notch: null,
    place,
  });
  const recut = (before: CutPiece, after: CutPiece) => ({
    ...{ before, after, count: 8 },
    courses: { before: [1], after: [1, 2, 3] },
  });

  it("say how courses step in another bond", () => {
    assert.equal(shiftWords({ up: INCH, across: [0] }, lengths), "all courses move up 1 in");
    assert.equal(
      shiftWords({ up: INCH, across: [-INCH, INCH] }, lengths),
      "all courses move up 1 in, and across by their place in the bond: left 1 in or right 1 in",
    );
    assert.equal(
      shiftWords({ up: 0, across: [0, INCH] }, lengths),
      "courses move by their place in the bond: not at all or right 1 in",
    );
  });

  it("say how far pieces moved, one by one or at most", () => {
    const by = (across: number, up: number) => ({ by: { across, up }, count: 3 });
    assert.equal(movedWords([by(0, INCH)], lengths), "3 pieces only moved, up 1 in");
    assert.equal(
      movedWords([by(-2 * INCH, 0), by(INCH, INCH)], lengths),
      "6 pieces only moved, by at most 2 in across and 1 in up or down",
    );
    assert.equal(movedWords([by(0, 0)], lengths), "3 pieces only moved");
  });

  it("say what pieces were cut to and are, and where they were if that is elsewhere", () => {
    assert.equal(
      recutWords(recut(cutTo(3), cutTo(2)), lengths),
      "8 pieces at the left end: 3 in wide -> 2 in wide, in courses 1 to 3",
    );
    assert.equal(
      recutWords(recut(cutTo(3), cutTo(2, "in the field")), lengths),
      "8 pieces in the field (was at the left end): 3 in wide -> 2 in wide, in courses 1 to 3",
    );
    const slot = { ...cutTo(3), cut: "slot" } as const;
    assert.equal(
      recutWords(recut(slot, slot), lengths),
      "8 pieces at the left end: U cut 3 in x 3 in, of another shape, in courses 1 to 3",
    );
  });

  it("say what pieces that change places are now", () => {
    const pair = [recut(cutTo(3), cutTo(6)), recut(cutTo(6), cutTo(3))] as const;
    assert.equal(
      exchangeWords(pair, lengths),
      "16 pieces at the left end change places: whole in courses 1 to 3, 3 in wide in courses 1 to 3",
    );
  });

  it("say how new and gone pieces are cut", () => {
    const group = { count: 1, piece: cutTo(2), courses: [4] };
    assert.equal(
      apartWords(group, "new", lengths),
      "1 new piece at the left end: 2 in wide, in course 4",
    );
    assert.equal(
      apartWords(group, "gone", lengths),
      "1 piece gone at the left end: 2 in wide, in course 4",
    );
  });

  it("say which courses on the wall would be cut differently", () => {
    assert.equal(
      onWallWords({ lay: null, courses: [1, 2, 3], pieces: 24 }),
      "set courses 1 to 3 would be cut differently, 24 of their pieces: they are on the wall",
    );
    assert.equal(
      onWallWords({ lay: "dado", courses: [2], pieces: 1 }),
      "set course 2 of dado would be cut differently, 1 of its pieces: it is on the wall",
    );
  });
});
