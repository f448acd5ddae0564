import assert from "node:assert/strict";
import highsLoader from "highs";
import {
  type CutLength,
  trimsFor,
  type TrimStock,
} from "../../../src/takeoff/trims/share-trims.js";
import { costOf } from "../../language/telling.js";
import { type Random, randomFrom } from "../../support/random.js";

const ends1 = (lengths: readonly number[]): CutLength[] =>
  lengths.map((length) => ({ length, ends: 1 }));
const ends0 = (lengths: readonly number[]): CutLength[] =>
  lengths.map((length) => ({ length, ends: 0 }));

describe("trims that cut lengths share", () => {
  it("hold two lengths with a kerf between them, and not a nanometre more", () => {
    const stock = { along: 100, kerf: 4 };
    assert.equal(trimsFor(ends1([60, 36]), stock), 1);
    assert.equal(trimsFor(ends1([60, 37]), stock), 2);
    assert.equal(trimsFor(ends0([60, 36]), stock), 1);
    assert.equal(trimsFor([], stock), 0);
    assert.equal(trimsFor(ends1([100]), stock), 1);
  });

  it("hold no more lengths with a factory end than they have ends", () => {
    const stock = { along: 100, kerf: 1 };
    assert.equal(trimsFor(ends1([10, 10, 10, 10]), stock), 2);
    assert.equal(trimsFor(ends0([10, 10, 10, 10]), stock), 1);
    assert.equal(trimsFor([...ends1([10, 10]), ...ends0([30, 30])], stock), 1);
  });

  it("are the fewest where longest first is not the best way", () => {
    // Longest first puts 53 + 36 and 33 + 27 + 25 together and has 18 left; 53 + 25 + 18 and 36 + 33 + 27 fill two.
    const lengths = ends0([53, 36, 33, 27, 25, 18]);
    assert.equal(trimsFor(lengths, { along: 96, kerf: 0 }), 2);
  });

  it("are the fewest there are, by trying all ways", () => {
    let shared = 0;
    for (let seed = 0; seed < 600; seed++) {
      const random = randomFrom(seed);
      const stock = { along: 100, kerf: random.integer(0, 6) };
      const lengths = randomLengths(random, random.integer(1, 7), stock.along);
      const found = trimsFor(lengths, stock);
      assert.equal(found, wantedTrims(lengths, stock), `seed ${seed}: ${JSON.stringify(lengths)}`);
      if (found < lengths.length - 1) shared++;
    }
    assert.ok(shared > 100, `${shared}`);
  });

  it("are the fewest there are, by an integer program", async () => {
    const highs = await highsLoader();
    for (let seed = 0; seed < 60; seed++) {
      const random = randomFrom(1000 + seed);
      const stock = { along: 100, kerf: random.integer(0, 6) };
      const lengths = randomLengths(random, random.integer(8, 12), stock.along);
      const { ObjectiveValue } = highs.solve(program(lengths, stock));
      const wanted = Math.round(ObjectiveValue);
      assert.equal(trimsFor(lengths, stock), wanted, `seed ${seed}: ${JSON.stringify(lengths)}`);
    }
  });

  it("of four thousand lengths are found without delay", () => {
    const random = randomFrom(7);
    const lengths = randomLengths(random, 4000, 1000);
    let found = 0;
    const cost = costOf(() => (found = trimsFor(lengths, { along: 1000, kerf: 3 })));
    assert.ok(found >= lengths.filter(({ length }) => length > 500).length);
    assert.ok(cost < 3_000, `${cost} ms`);
  });
});

function randomLengths(random: Random, count: number, along: number): CutLength[] {
  const oneKind = random.chance(0.3);
  return Array.from({ length: count }, () => ({
    length: random.integer(5, random.chance(0.5) ? along : along / 2),
    ends: oneKind || random.chance(0.5) ? 1 : 0,
  }));
}

/** The fewest trims, by putting each length in every trim begun so far, and in a new one. */
function wantedTrims(lengths: readonly CutLength[], { along, kerf }: TrimStock): number {
  let fewest = lengths.length;
  const place = (i: number, trims: readonly (readonly CutLength[])[]): void => {
    if (trims.length >= fewest && i < lengths.length) return;
    if (i === lengths.length) {
      fewest = Math.min(fewest, trims.length);
      return;
    }
    trims.forEach((trim, t) => {
      const filled = [...trim, lengths[i]!];
      if (holds(filled))
        place(
          i + 1,
          trims.map((each, n) => (n === t ? filled : each)),
        );
    });
    place(i + 1, [...trims, [lengths[i]!]]);
  };
  const holds = (trim: readonly CutLength[]): boolean =>
    trim.reduce((sum, { length }) => sum + length, 0) + kerf * (trim.length - 1) <= along &&
    trim.reduce((sum, { ends }) => sum + ends, 0) <= 2;
  place(0, []);
  return fewest;
}

/** The same as an integer program: `u` says that a trim is begun, `x` that a length comes from it. */
function program(lengths: readonly CutLength[], { along, kerf }: TrimStock): string {
  const trims = lengths.map((_, t) => t);
  const each = (t: number, factor: (length: CutLength) => number): string =>
    lengths.map((length, i) => `${factor(length)} x${i}t${t}`).join(" + ");
  return [
    "Minimize",
    ` used: ${trims.map((t) => `u${t}`).join(" + ")}`,
    "Subject To",
    ...lengths.map((_, i) => ` once${i}: ${trims.map((t) => `x${i}t${t}`).join(" + ")} = 1`),
    ...trims.map(
      (t) => ` long${t}: ${each(t, ({ length }) => length + kerf)} - ${along + kerf} u${t} <= 0`,
    ),
    ...trims.map((t) => ` ends${t}: ${each(t, ({ ends }) => ends)} - 2 u${t} <= 0`),
    ...trims.slice(1).map((t) => ` order${t}: u${t} - u${t - 1} <= 0`),
    "Binary",
    ...trims.map((t) => ` u${t}`),
    ...trims.flatMap((t) => lengths.map((_, i) => ` x${i}t${t}`)),
    "End",
  ].join("\n");
}
