import assert from "node:assert/strict";
import { run } from "../../../src/engine.js";
import { formatLength } from "../../../src/measure/index.js";
import type { TrimTakeoff } from "../../../src/takeoff/index.js";
import { trimTakeoffs } from "../../../src/takeoff/trims/trim-takeoffs.js";
import { exampleNames, exampleSource, exampleText } from "../../support/examples.js";
import { solveClean } from "../../support/solve-text.js";

const TILE = "tile field {\n face 6 x 3\n thickness 1/4\n}\n";
const LAY = "lay field {\n bond stack\n joint 1/8\n}\n";
const INCH = 25_400_000;

function trimsOf(along: string, stock: string, wall: string): TrimTakeoff[] {
  const trim = `trim nose {\n face ${along} x 2\n thickness 1/4\n${stock}}\n`;
  const text = `${TILE}${trim}saw {\n kerf 1/8\n}\nwall back {\n size 60 x 60\n${wall}${LAY}}\n`;
  return trimTakeoffs(solveClean(text).solved);
}

/** `12 in left right: 2 at back sash top, back sash bottom`. */
function cutsOf({ pieces }: TrimTakeoff): string[] {
  return pieces.map(({ length, count, mitred, whole, where }) => {
    const size = [formatLength(length, "inch"), ...mitred, ...(whole ? ["whole"] : [])].join(" ");
    return `${size}: ${count} at ${where.map((place) => `${place.wall} ${place.along}`).join(", ")}`;
  });
}

const window = (join: string): string =>
  `window sash {\n at 20, 20\n size 12 x 20\n frame nose ${join}\n}\n`;

describe("what a trim takes", () => {
  it("is lengths by their mitres and places, from the longest down", () => {
    // A frame of 16 x 24 from a profile of 60: each side is one length, mitred at both ends.
    const [taken] = trimsOf("60", "price 3.10 a piece\n", window("mitre"));
    const joint = Math.round((INCH / 8) * Math.SQRT1_2);
    const [jamb, level] = [24 * INCH - 2 * joint, 16 * INCH - 2 * joint];
    assert.deepEqual(
      taken!.pieces.map(({ length, count, mitred, whole }) => [length, count, mitred, whole]),
      [
        [jamb, 2, ["left", "right"], false],
        [level, 2, ["left", "right"], false],
      ],
    );
    assert.deepEqual(
      taken!.pieces.flatMap(({ where }) => where.map(({ along }) => along)),
      ["sash left", "sash right", "sash bottom", "sash top"],
    );
    assert.equal(taken!.length, 2 * jamb + 2 * level);
    // 24 + 24 in one, 16 + 16 in another: 80 in all are more than 60.
    assert.equal(taken!.bought, 2);
    assert.deepEqual(taken!.cost, { hundredths: 620 });
  });

  it("cuts two lengths from one piece where both fit", () => {
    // A butted frame of 16 x 14 from 24 in: the jambs stand between sill and head with a joint at both ends.
    const opening = "window sash {\n at 20, 20\n size 12 x 10\n frame nose butt\n}\n";
    const [taken] = trimsOf("24", "", opening);
    assert.deepEqual(cutsOf(taken!), [
      "16 in: 2 at back sash bottom, back sash top",
      "9 3/4 in: 2 at back sash left, back sash right",
    ]);
    assert.equal(taken!.bought, 3);
    // 19 5/8 in are just enough for both jambs and the kerf between them.
    assert.equal(trimsOf("19 5/8", "", opening)[0]!.bought, 3);
    assert.equal(trimsOf("19 9/16", "", opening)[0]!.bought, 4);
  });

  it("has whole pieces uncut between the two cut ends of a run", () => {
    const [taken] = trimsOf("6", "", "left free trim nose\nbottom free\ntop free\n");
    assert.deepEqual(cutsOf(taken!), [
      `6 in whole: 8 at ${Array(8).fill("back left end").join(", ")}`,
      "5 7/16 in: 2 at back left end, back left end",
    ]);
    assert.deepEqual([taken!.bought, taken!.length, taken!.cost], [10, 60 * INCH, null]);
  });

  it("tells a lone mitre by its hand", () => {
    const [taken] = trimsOf("13", "", window("mitre"));
    const hands = taken!.pieces.map(({ mitred }) => mitred.join());
    assert.deepEqual([...new Set(hands)].sort(), ["left", "right"]);
    assert.equal(
      taken!.pieces.reduce((sum, { count }) => sum + count, 0),
      8,
    );
  });

  it("is nothing of a trim that isn't set", () => {
    assert.deepEqual(trimsOf("6", "", ""), []);
  });

  it("has every piece of the examples once, in no fewer trims than their length asks for", () => {
    for (const name of exampleNames()) {
      const { solved } = run(exampleText(name), exampleSource(name));
      const taken = trimTakeoffs(solved);
      const set = solved.walls.flatMap(({ trims }) => trims).flatMap((each) => each.pieces);
      const pieces = taken.flatMap((each) => each.pieces);
      assert.equal(
        pieces.reduce((sum, { count }) => sum + count, 0),
        set.length,
        name,
      );
      for (const { trim, bought, pieces: cuts } of taken) {
        const length = cuts.reduce((sum, cut) => sum + cut.length * cut.count, 0);
        const count = cuts.reduce((sum, cut) => sum + cut.count, 0);
        assert.ok(bought * trim.face.along >= length && bought <= count, name);
        assert.ok(cuts.every((cut) => cut.where.length === cut.count));
      }
    }
  });
});
