import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import type { Fact, Value } from "../../../src/compare/comparison.js";
import { factWords, partWords } from "../../../src/compare/words/fact-words.js";
import { Lengths } from "../../../src/compare/words/lengths.js";

const INCH = NM_PER.inch;

describe("the words of facts", () => {
  const lengths = new Lengths("inch");
  const niche = { of: "niche", name: { before: "shelf", after: "ledge" } } as const;
  const long = (inches: number): Value => ({ kind: "length", nm: inches * INCH });
  const told = (fact: Pick<Fact, "subject" | "name" | "before" | "after"> & Partial<Fact>) =>
    factWords({ which: null, ...fact }, lengths);

  it("name parts that came, went and were renamed", () => {
    const part = (before: string | null, after: string | null) =>
      partWords({ kind: "niche", name: { before, after } });
    assert.equal(part(null, "shelf"), "niche shelf is new");
    assert.equal(part("shelf", null), "niche shelf is gone");
    assert.equal(part("shelf", "ledge"), "niche shelf is now called ledge");
  });

  it("say what was and what is, under the name that is", () => {
    const depth = { subject: niche, name: "depth", before: long(3), after: long(4) } as const;
    assert.equal(told(depth), "niche ledge, depth: 3 in -> 4 in");
    assert.equal(told({ ...depth, before: null }), "niche ledge, depth: not stated -> 4 in");
    const size = (up: number): Value => ({ kind: "size", across: 12 * INCH, up: up * INCH });
    assert.equal(
      told({ subject: niche, name: "size", before: size(9), after: size(12) }),
      "niche ledge: 12 in x 9 in -> 12 in x 12 in",
    );
  });

  it("say of a limit that isn't stated that it is as usual", () => {
    const limit = { subject: { of: "plan" }, name: "limit", which: "sliver" } as const;
    assert.equal(
      told({ ...limit, before: null, after: long(1) }),
      "rules, sliver: as usual -> 1 in",
    );
  });

  it("say of a place how far it moved", () => {
    const at = (x: number): Value => ({ kind: "place", x: x * INCH, y: 0 });
    assert.equal(
      told({ subject: niche, name: "place", before: at(10), after: at(12) }),
      "niche ledge moves right 2 in",
    );
  });

  it("say of a reading that it came, went or changed", () => {
    const reading = {
      subject: { of: "edge", side: "left" },
      name: "reading",
      which: INCH,
    } as const;
    const [none, one, two] = [null, long(1), long(2)];
    assert.equal(
      told({ ...reading, before: none, after: one }),
      "left at 1 in: now measured, 1 in",
    );
    assert.equal(
      told({ ...reading, before: one, after: none }),
      "left at 1 in: no longer measured (was 1 in)",
    );
    assert.equal(told({ ...reading, before: one, after: two }), "left at 1 in: 1 in -> 2 in");
  });

  it("quote titles, and leave out of a start what its label says", () => {
    const words = (text: string): Value => ({ kind: "words", words: text });
    const wall = { of: "wall" } as const;
    assert.equal(
      told({ subject: { of: "plan" }, name: "title", before: words("A"), after: words("B") }),
      'plan, title: "A" -> "B"',
    );
    assert.equal(
      told({ subject: wall, name: "up", before: words("up a"), after: words("up b") }),
      "up: a -> b",
    );
  });
});
