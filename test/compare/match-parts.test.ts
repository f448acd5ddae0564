import assert from "node:assert/strict";
import { matchParts } from "../../src/compare/match-parts.js";

const TRAITS = {
  nameOf: ({ name }: Part) => name,
  likeness: (a: Part, b: Part) => (a.size === b.size ? 1 : 0),
  enough: 1,
};

interface Part {
  readonly name: string;
  readonly size: number;
}

function part(name: string, size: number): Part {
  return { name, size };
}

describe("matchParts", () => {
  it("matches by name first, whatever the order", () => {
    const [a, b] = [part("a", 1), part("b", 2)];
    assert.deepEqual(matchParts([a, b], [b, a], TRAITS), [
      { before: 1, after: 0 },
      { before: 0, after: 1 },
    ]);
  });

  it("matches what is left by likeness", () => {
    assert.deepEqual(matchParts([part("a", 1)], [part("x", 1)], TRAITS), [{ before: 0, after: 0 }]);
  });

  it("tells what came and what went", () => {
    assert.deepEqual(matchParts([part("a", 1)], [part("x", 2)], TRAITS), [
      { before: -1, after: 0 },
      { before: 0, after: -1 },
    ]);
  });
});
