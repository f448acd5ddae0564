import assert from "node:assert/strict";
import { drawHeadless } from "../../src/drawing/headless.js";
import { run } from "../../src/engine.js";
import type { Source } from "../../src/language/index.js";
import type { Diagnostic, SourceRange } from "../../src/model/index.js";
import { exampleNames, exampleSource, exampleText } from "../support/examples.js";
import { mutate } from "../support/mutate.js";
import { printSketch } from "../support/print-sketch.js";
import { randomFrom } from "../support/random.js";
import { ANY, randomSketch } from "../support/random-sketch.js";
import { ALONE } from "../support/solve-text.js";

const PLANS = 10_000;
/** Every so many plans one is a mutated example; the others are mutated random plans. */
const EXAMPLE_EVERY = 20;
/** The processor's time that one plan may take from text to picture. */
const MOST_MS = 1000;

describe(`${PLANS} mutated plans`, () => {
  it("are read, solved, checked and drawn: no crash, none over a second, every range in its text", () => {
    for (let seed = 0; seed < PLANS; seed++) {
      const { text, source } = mutatedPlan(seed);
      const told = `seed ${seed}:\n${JSON.stringify(text)}`;
      let spent = takePlan(text, source, told);
      // The machine may have been busy: the plan is slow only if it is slow again.
      if (spent > MOST_MS) spent = Math.min(spent, takePlan(text, source, told));
      assert.ok(spent <= MOST_MS, `${spent} ms, ${told}`);
    }
  }).timeout(120_000);
});

function mutatedPlan(seed: number): { text: string; source: Source } {
  const random = randomFrom(seed);
  if (seed % EXAMPLE_EVERY === 0) {
    const name = random.pick(exampleNames());
    return { text: mutate(exampleText(name), random), source: exampleSource(name) };
  }
  const sketch = randomSketch(seed, { ...ANY, most: 3 });
  const text = printSketch(sketch, random.pick(["inch", "mm"]));
  return { text: mutate(text, random), source: ALONE };
}

/** Takes a plan the whole way; the processor's time that it took, in milliseconds. */
function takePlan(text: string, source: Source, told: string): number {
  const before = process.cpuUsage();
  const outcome = attempt(() => run(text, source), told);
  const picture = attempt(() => drawHeadless(outcome.scene()), told);
  const { user, system } = process.cpuUsage(before);
  assert.match(picture, /^<svg[\s\S]*<\/svg>\s*$/, told);
  for (const diagnostic of outcome.diagnostics) checkRange(diagnostic, text, source, told);
  return (user + system) / 1000;
}

function attempt<T>(act: () => T, told: string): T {
  try {
    return act();
  } catch (error) {
    throw new Error(`crashed on ${told}`, { cause: error });
  }
}

/** The diagnostic's place is in the text (or in the file that it names). */
function checkRange(diagnostic: Diagnostic, text: string, source: Source, told: string): void {
  const { file, range, code, message, related = [] } = diagnostic;
  assert.ok(code.length > 0 && message.length > 0, told);
  for (const place of [{ file, range }, ...related]) {
    const holder = place.file === source.file ? text : source.read(place.file);
    assert.notEqual(holder, null, `${code} names a file that is there, ${told}`);
    const where = `${code} at ${JSON.stringify(place.range)}, ${told}`;
    assert.ok(isInside(place.range, holder!), where);
  }
}

function isInside({ start, end }: SourceRange, text: string): boolean {
  const lines = text.split(/\r\n|\r|\n/);
  const exists = ({ line, character }: SourceRange["start"]) =>
    line >= 0 && line < lines.length && character >= 0 && character <= lines[line]!.length;
  const isForward =
    start.line < end.line || (start.line === end.line && start.character <= end.character);
  return exists(start) && exists(end) && isForward;
}
