// A process of its own: takes the mutated plans from one seed up to another, the whole way from text to
// picture, and tells its parent what was wrong with any.
import { drawHeadless } from "../../src/drawing/headless.js";
import { run } from "../../src/engine.js";
import type { Source } from "../../src/language/index.js";
import type { Diagnostic, SourceRange } from "../../src/model/index.js";
import { exampleNames, exampleSource, exampleText } from "./examples.js";
import { mutate } from "./mutate.js";
import { printSketch } from "./print-sketch.js";
import { randomFrom } from "./random.js";
import { ANY, randomSketch } from "./random-sketch.js";
import { ALONE } from "./solve-text.js";

/** Every so many plans one is a mutated example; the others are mutated random plans. */
const EXAMPLE_EVERY = 25;
/** The processor's time that one plan may take from text to picture. */
const MOST_MS = 1000;
/** So many faults are enough to tell. */
const MOST_FAULTS = 10;

const [from, to] = process.argv.slice(2).map(Number);
const faults: string[] = [];
let seed = from!;
for (; seed < to! && faults.length < MOST_FAULTS; seed++) {
  const { text, source } = mutatedPlan(seed);
  for (const fault of faultsOf(text, source)) {
    faults.push(`seed ${seed}: ${fault}\n${JSON.stringify(text)}`);
  }
}
process.send?.({ plans: seed - from!, faults });

function mutatedPlan(of: number): { text: string; source: Source } {
  const random = randomFrom(of);
  if (of % EXAMPLE_EVERY === 0) {
    const name = random.pick(exampleNames());
    return { text: mutate(exampleText(name), random), source: exampleSource(name) };
  }
  const sketch = randomSketch(of, { ...ANY, measured: 0.2, most: 3 });
  const text = printSketch(sketch, random.pick(["inch", "mm"]));
  return { text: mutate(text, random), source: ALONE };
}

function faultsOf(text: string, source: Source): string[] {
  try {
    const taken = takePlan(text, source);
    // The machine may have been busy with collecting: a plan is slow only if it is slow again.
    const spent = taken.spent > MOST_MS ? takePlan(text, source).spent : taken.spent;
    const slow = spent > MOST_MS ? [`took ${spent} ms`] : [];
    return [...slow, ...taken.faults];
  } catch (error) {
    return [`crashed: ${error instanceof Error ? error.stack! : String(error)}`];
  }
}

/** Takes a plan the whole way; what is wrong, and the processor's time in milliseconds. */
function takePlan(text: string, source: Source): { spent: number; faults: string[] } {
  const before = process.cpuUsage();
  const { diagnostics, scene } = run(text, source);
  const picture = drawHeadless(scene());
  const { user, system } = process.cpuUsage(before);
  const whole = /^<svg[\s\S]*<\/svg>\s*$/.test(picture) ? [] : ["the picture is not whole"];
  const misplaced = diagnostics.flatMap((diagnostic) => misplacedIn(diagnostic, text, source));
  return { spent: (user + system) / 1000, faults: [...whole, ...misplaced] };
}

/** The places of a diagnostic that are not in the text (or in the file that it names). */
function misplacedIn(diagnostic: Diagnostic, text: string, source: Source): string[] {
  const { file, range, code, message, related = [] } = diagnostic;
  if (code === "" || message === "") return ["a diagnostic without a code or a message"];
  return [{ file, range }, ...related]
    .filter((place) => {
      const holder = place.file === source.file ? text : source.read(place.file);
      return holder === null || !isInside(place.range, holder);
    })
    .map((place) => `${code} is outside of ${place.file}: ${JSON.stringify(place.range)}`);
}

function isInside({ start, end }: SourceRange, text: string): boolean {
  const lines = text.split(/\r\n|\r|\n/);
  const exists = ({ line, character }: SourceRange["start"]) =>
    line >= 0 && line < lines.length && character >= 0 && character <= lines[line]!.length;
  const isForward =
    start.line < end.line || (start.line === end.line && start.character <= end.character);
  return exists(start) && exists(end) && isForward;
}
