import assert from "node:assert/strict";

type Functions = Readonly<Record<string, (...of: unknown[]) => unknown>>;

const load = async (module: string) => (await import(module)) as Functions;

const NUMBERS = [3, 1, 2, 1];
const LISTS = [[], NUMBERS, [undefined, 0, "a", null, ""]];
const OBJECTS = [{}, { a: 1, b: undefined, c: 3 }];
const ANY = [...LISTS, ...OBJECTS];
const VALUES = [...ANY, undefined, null, 0, "", "word", /x/, () => 1];
const isOdd = (one: unknown) => Number(one) % 2 === 1;
const tell = (one: unknown, key: unknown) => `${String(key)}: ${String(one)}`;

/** What each function is asked with; all get their own copies. */
const asked: Readonly<Record<string, () => unknown[][]>> = {
  assign: () => OBJECTS.map((of) => [{ b: 2, d: 4 }, { ...of }]),
  clone: () => ANY.map((of) => [of]),
  compact: () => LISTS.map((of) => [of]),
  defaults: () => OBJECTS.map((of) => [{ ...of }, { b: 2, d: 4 }]),
  difference: () => LISTS.map((of) => [of, [1, "a"]]),
  drop: () => [[NUMBERS], [NUMBERS, 2], [NUMBERS, 9], [[]]],
  dropRight: () => [[NUMBERS], [NUMBERS, 2], [NUMBERS, 9], [[]]],
  every: () => [...ANY, [1, 3], undefined].map((of) => [of, isOdd]),
  filter: () => [...ANY, undefined].map((of) => [of, isOdd]),
  find: () => [...ANY, undefined].map((of) => [of, isOdd]),
  first: () => [...LISTS, undefined].map((of) => [of]),
  flatMap: () => ANY.map((of) => [of, (one: unknown) => [one, [one]]]),
  flatten: () => [[[1, [2, [3]], []]]],
  has: () => VALUES.flatMap((of) => ["a", "b", "length", "toString", 1].map((key) => [of, key])),
  identity: () => VALUES.map((of) => [of]),
  includes: () => [...ANY, undefined].flatMap((of) => [1, "a", 9].map((one) => [of, one])),
  indexOf: () => [1, 9].map((one) => [NUMBERS, one]),
  isArray: () => VALUES.map((of) => [of]),
  isEmpty: () => VALUES.map((of) => [of]),
  isFunction: () => VALUES.map((of) => [of]),
  isObject: () => VALUES.map((of) => [of]),
  isRegExp: () => VALUES.map((of) => [of]),
  isString: () => VALUES.map((of) => [of]),
  isUndefined: () => VALUES.map((of) => [of]),
  keys: () => [...OBJECTS, undefined].map((of) => [of]),
  last: () => [...LISTS, undefined].map((of) => [of]),
  map: () => [...ANY, undefined].map((of) => [of, tell]),
  groupBy: () => LISTS.map((of) => [of, isOdd]),
  noop: () => VALUES.map((of) => [of]),
  pickBy: () => OBJECTS.map((of) => [of, isOdd]),
  reduce: () =>
    ANY.map((of) => [of, (sum: string, one: unknown, key: unknown) => sum + tell(one, key), "-"]),
  reject: () => [...ANY, undefined].map((of) => [of, isOdd]),
  some: () => [...ANY, undefined].map((of) => [of, isOdd]),
  uniq: () => LISTS.map((of) => [of]),
  upperFirst: () => [["word"], [""]],
  values: () => [...ANY, undefined].map((of) => [of]),
};

/** What a function tells on its way, up to where it is told to stop. */
function told({ forEach }: Functions, of: unknown): string[] {
  const words: string[] = [];
  forEach!(of, (one: unknown, key: unknown) => {
    words.push(tell(one, key));
    return !isOdd(one);
  });
  return words;
}

describe("what Chevrotain asks of lodash", () => {
  let plain: Functions;
  let lodash: Functions;
  before(async () => {
    plain = await load("../../.scripts/plain-lodash.mjs");
    lodash = await load("lodash-es");
  });

  it("is answered as lodash does", () => {
    for (const [name, questions] of Object.entries(asked)) {
      for (const [i, question] of questions().entries()) {
        const wanted = lodash[name]!(...questions()[i]!);
        assert.deepEqual(plain[name]!(...question), wanted, `${name} of question ${i + 1}`);
      }
    }
  });

  it("is told in the same order, until it is told to stop", () => {
    for (const of of [...ANY, [2, 4], undefined])
      assert.deepEqual(told(plain, of), told(lodash, of));
  });

  it("is all there, and tested", () => {
    assert.deepEqual(Object.keys(plain).sort(), [...Object.keys(asked), "forEach"].sort());
  });
});
