import assert from "node:assert/strict";
import { compare } from "../../src/compare/index.js";
import { run } from "../../src/engine.js";
import type { Source } from "../../src/language/index.js";
import { exampleNames, exampleSource, exampleText } from "../support/examples.js";
import { mutate } from "../support/mutate.js";
import { printSketch } from "../support/print-sketch.js";
import { type Random, randomFrom } from "../support/random.js";
import { randomRoom } from "../support/random-room.js";
import { ALONE } from "../support/solve-text.js";

const ROOMS = 60;

/** A text with one of its numbers changed a little: the walls that it says nothing of stay what they are. */
function nudged(text: string, random: Random): string {
  const numbers = [...text.matchAll(/(?<![\w.])\d+(?![\w.])/g)];
  if (numbers.length === 0) return text;
  const { 0: number, index } = random.pick(numbers);
  const other = String(Math.max(1, Number(number) + random.pick([-3, -1, 1, 2])));
  return text.slice(0, index) + other + text.slice(index + number.length);
}

function takeTwice(text: string, changed: string, source: Source): void {
  const before = run(text, source);
  const [anew, shared] = [run(changed, source), run(changed, source, before.solved)];
  assert.deepEqual(shared.solved, anew.solved, changed);
  assert.deepEqual(shared.diagnostics, anew.diagnostics, changed);
  const [told, known] = [compare(before, shared), compare(before, anew)];
  assert.deepEqual(told, known, changed);
  assert.deepEqual(told.quantities, known.quantities, changed);
}

describe("a changed plan that shares walls with the one before", () => {
  for (const name of exampleNames()) {
    it(`comes to what it comes to alone: ${name}`, () => {
      const random = randomFrom(name.length);
      const [text, source] = [exampleText(name), exampleSource(name)];
      takeTwice(text, `\n# moved down by a line\n${text}`, source);
      for (let n = 0; n < 4; n++) takeTwice(text, nudged(text, random), source);
    }).timeout(120_000);
  }

  it(`comes to what it comes to alone: ${ROOMS} random rooms, a number or some words of them changed`, () => {
    for (let seed = 0; seed < ROOMS; seed++) {
      const random = randomFrom(seed);
      const text = printSketch(randomRoom(seed), seed % 2 === 0 ? "mm" : "inch");
      takeTwice(text, seed % 3 === 0 ? mutate(text, random) : nudged(text, random), ALONE);
    }
  }).timeout(300_000);
});
