import assert from "node:assert/strict";
import { bandOff, bandPairs, bandsOf } from "../../src/rules/band.js";
import { NM_PER } from "../../src/measure/index.js";
import { bandText, bandWall, LAYS } from "./band-text.js";
import { solveClean } from "../support/solve-text.js";

const IN = NM_PER.inch;

const courses = (list: string): string => LAYS.replace(/courses .*/, `courses ${list}`);
const namesOf = (backLays: string): string[] =>
  bandsOf(bandWall({ backLays }).wall).map(({ lay }) => lay.lay.name);

describe("a band", () => {
  it("is a course of another tile between courses, with the lays it touches", () => {
    const [band, ...others] = bandsOf(bandWall().wall);
    assert.deepEqual(others, []);
    assert.deepEqual(
      [band!.under.lay.name, band!.lay.lay.name, band!.over!.lay.name],
      ["field", "liner", "field-2"],
    );
    // 8 courses of 3 in and 8 joints of 1/8 in stand under it.
    assert.equal(band!.lay.region.bounds.bottom, 25 * IN);
  });

  it("may be the cap of a wainscot, but no base: that follows the floor", () => {
    assert.deepEqual(namesOf(courses("8 of field, 1 of liner")), ["liner"]);
    assert.equal(bandsOf(bandWall({ backLays: courses("8, 1 of liner") }).wall)[0]!.over, null);
    assert.deepEqual(namesOf(courses("1 of liner, rest of field")), []);
  });

  it("may have others on either side, with a wider one between", () => {
    const list = "8 of field, 1 of pencil, 3 of liner, 1 of pencil, rest of field";
    assert.deepEqual(namesOf(courses(list)), ["pencil", "liner", "pencil-2"]);
  });

  it("is 12 in high at most, unless it has one course", () => {
    assert.deepEqual(namesOf(courses("5 of field, 10 of liner, rest of field")), ["liner"]);
    // 11 courses of 1 in with 10 joints of 1/8 in are 12 1/4 in.
    assert.deepEqual(namesOf(courses("5 of field, 11 of liner, rest of field")), []);
  });

  it("is no rest of the field, however low", () => {
    const low = courses("8 of field, 1 of liner, 4 of field, 1 of liner, rest of field");
    // Over the second liner are 8 1/4 in of field.
    assert.deepEqual(namesOf(low), ["liner", "liner-2"]);
  });

  it("is none of the same tile, of a panel, or of what ends beside another lay", () => {
    assert.deepEqual(namesOf(courses("8 of field, 1 of field, rest of field")), []);
    const panel =
      "lay field {\n bond stack\n joint 1/8\n}\nlay liner {\n at 10, 20\n size 20 x 1\n bond stack\n joint 1/8\n}";
    assert.deepEqual(namesOf(panel), []);
  });
});

describe("bands at a corner", () => {
  const pairsOf = (backLays: string, sideLays: string) => {
    const { solved } = solveClean(bandText({ backLays, sideLays }));
    return bandPairs(solved.walls[1]!, solved);
  };

  it("meet those of their tile, and are off by what their bottoms and tops are", () => {
    const [pair] = pairsOf(LAYS, courses("9 of field, 1 of liner, rest of field"));
    assert.deepEqual(bandOff(pair!), { bottom: 3.125 * IN, top: 3.125 * IN });
    assert.deepEqual(pairsOf(LAYS, courses("8 of field, 1 of pencil, rest of field")), []);
    assert.deepEqual(pairsOf(LAYS, courses("rest of field")), []);
  });

  it("meet in their order where both walls have as many, else the nearest", () => {
    const two = courses("2 of field, 1 of liner, 9 of field, 1 of liner, rest of field");
    const high = courses("8 of field, 1 of liner, 4 of field, 1 of liner, rest of field");
    const offs = (pairs: ReturnType<typeof pairsOf>) => pairs.map((pair) => bandOff(pair).bottom);
    // Bottoms at 6 1/4 and 35 1/2 in, and at 25 and 38 5/8 in.
    assert.deepEqual(offs(pairsOf(two, high)), [18.75 * IN, 3.125 * IN]);
    assert.deepEqual(offs(pairsOf(two, LAYS)), [-10.5 * IN]);
  });

  it("are looked at once, from the wall whose tile covers the other's", () => {
    const { solved } = solveClean(bandText());
    assert.deepEqual(
      solved.walls.map((wall) => bandPairs(wall, solved).length),
      [0, 1],
    );
  });
});
