import assert from "node:assert/strict";
import { parse, resolve, tidy } from "../../src/language/index.js";
import { exampleNames, exampleText } from "../support/examples.js";
import { mutate } from "../support/mutate.js";
import { printSketch } from "../support/print-sketch.js";
import { randomFrom } from "../support/random.js";
import { randomSketch } from "../support/random-sketch.js";

const STOCK = exampleText("stock.tileplan");
const MUTATED = 400;

/** What a text means, without the places of its parts. */
function meaningOf(text: string): string {
  const source = { file: "a.tileplan", root: "", read: () => STOCK };
  const { plan, diagnostics } = resolve(parse(text), source);
  const told = diagnostics.map(({ code, message, severity }) => `${severity} ${code} ${message}`);
  const places = new Set(["origin", "range", "head"]);
  // A faulty used file is told by its lines, which are none of this text's.
  const keep = (key: string, value: unknown): unknown => (places.has(key) ? undefined : value);
  return JSON.stringify([plan, told.sort()], keep, 1);
}

function assertTidies(text: string): void {
  const tidied = tidy(text);
  assert.equal(tidy(tidied), tidied, "a tidy text stays itself");
  assert.equal(meaningOf(tidied), meaningOf(text), "the meaning stays");
  assert.deepEqual(commentsOf(tidied), commentsOf(text), "comments stay");
}

/** Comments, in order; found by a way of their own. */
function commentsOf(text: string): string[] {
  return (text.match(/#[^\r\n]*/g) ?? []).map((comment) => comment.trimEnd());
}

describe("tidy", () => {
  it("leaves the examples as they are", () => {
    for (const name of exampleNames()) assert.equal(tidy(exampleText(name)), exampleText(name));
  });

  it("puts one space between words, and indents by two for each block", () => {
    const text = 'wall  back "B"{\n size   60x96\n\tlay field{\n bond stack\n  }\n    }\n';
    const tidied = 'wall back "B" {\n  size 60 x 96\n  lay field {\n    bond stack\n  }\n}\n';
    assert.equal(tidy(text), tidied);
  });

  it("keeps a percent sign with its number, and a unit as it was written", () => {
    assert.equal(tidy("tile a {\n  breakage  3 %\n}\n"), "tile a {\n  breakage 3%\n}\n");
    assert.equal(
      tidy('mortar  "thin"{\nbag 50  lb   covers 40sqft\nnotch 1/4x3/8\n}\n'),
      'mortar "thin" {\n  bag 50 lb covers 40sqft\n  notch 1/4 x 3/8\n}\n',
    );
  });

  it("aligns comments behind statements, a paragraph at a time", () => {
    const text =
      "units inch # a\nbed 1/8   # b\n\nlet a-rather-long-name-of-a-length = 46 1/4 + 3 # c\n";
    const [units, bed, , name] = tidy(text).split("\n");
    assert.equal(units!.indexOf("#"), 42);
    assert.equal(bed!.indexOf("#"), 42);
    assert.equal(name!.indexOf("#"), "let a-rather-long-name-of-a-length = 46 1/4 + 3".length + 2);
  });

  it("keeps a sign with its length and sets operators apart", () => {
    assert.equal(tidy("let a = (3-b)*-2\n"), "let a = (3 - b) * -2\n");
    assert.equal(tidy("let a=-3/16\n"), "let a = -3/16\n");
    assert.equal(tidy("bed -  3\n"), "bed -3\n");
    assert.equal(tidy("saw { kerf  - 3 }\n"), "saw { kerf -3 }\n");
    // A length may have the name of a statement.
    assert.equal(tidy("let low = depth-a -3\n"), "let low = depth-a - 3\n");
    assert.equal(tidy("let low = 4 + depth -3\n"), "let low = 4 + depth - 3\n");
  });

  it("keeps lengths as they were written, and the slash of a rule's code tight", () => {
    assert.equal(tidy("let a = 5-7/8 + 1'  6\" + 300  mm\n"), "let a = 5-7/8 + 1' 6\" + 300 mm\n");
    assert.equal(tidy('allow  cut/sliver   "why"\n'), 'allow cut/sliver "why"\n');
  });

  it("keeps one blank line of several, none at the ends, and ends in a line end", () => {
    assert.equal(tidy("\n\nunits mm\n\n\n\nbed 4"), "units mm\n\nbed 4\n");
  });

  it("keeps line ends of every kind", () => {
    assert.equal(tidy("units  mm\r\nbed  4\r\n"), "units mm\r\nbed 4\r\n");
  });

  it("leaves a line that can't be understood to the letter", () => {
    const broken = "   size  60   x # oops\n";
    assert.ok(tidy(`wall a {\n${broken}  bottom   pan\n}\n`).includes(`${broken}  bottom pan\n`));
  });

  it("leaves the indentation where a brace is missing, since it says what was meant", () => {
    const text = "wall a {\n     size 1 x 2\nwall b {\n  size 3 x 4\n}\n";
    assert.equal(tidy(text), text);
  });

  it("keeps the meaning and the comments of random plans", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const plan = printSketch(randomSketch(seed), seed % 2 ? "inch" : "mm");
      const random = randomFrom(seed);
      // Spread out and squeezed, with comments thrown in.
      const untidy = plan.replace(/ (?=[^"]*(?:"[^"]*"[^"]*)*$)/gm, () =>
        " ".repeat(random.integer(1, 3)),
      );
      assertTidies(untidy.replace(/\n/g, () => (random.chance(0.2) ? "  #  note\n" : "\n")));
    }
  });

  it("keeps the meaning and the comments of mutated plans", () => {
    const texts = exampleNames().map(exampleText);
    const random = randomFrom(7);
    for (let i = 0; i < MUTATED; i++) {
      const text = mutate(texts[i % texts.length]!, random);
      try {
        assertTidies(text);
      } catch (error) {
        throw new Error(`in the plan\n${JSON.stringify(text)}`, { cause: error });
      }
    }
  });
});
