import highsLoader from "highs";
import { NM_PER } from "../../src/measure/index.js";
import type { Lay, Plan, Wall } from "../../src/model/index.js";
import type { Subject } from "./bundle.js";
import { integerModel } from "./integer-model.js";
import { example } from "./plans.js";
import { sink, summarise, time, type Timing } from "./statistics.js";
import type { Bar } from "./table.js";

const NAME = "back-wall.tileplan";
/** Brute force tries every 1/64 in both ways; it is timed on one start in so many. */
const STEP = NM_PER.inch / 64;
const SAMPLE = 64;

interface Question {
  readonly plan: Plan;
  readonly wall: Wall;
  readonly lay: Lay;
}

/** Choosing a start for the first example, against brute force and a mixed-integer solver. */
export async function benchChoice(
  subject: Subject,
): Promise<{ timings: Timing[]; bars: Bar[]; note: string }> {
  const { text, source } = example(NAME);
  const { plan } = subject.resolve(subject.parse(text), source);
  const wall = plan.walls[0]!;
  const question = { plan, wall, lay: wall.lays[0]! };
  const chosen = time("choose a start", { warmup: 5, rounds: 41 }, () =>
    subject.choose(plan, wall, question.lay),
  );
  const brute = timeBruteForce(subject, question);
  const highs = await highsLoader();
  const model = integerModel(subject.regionOf(plan, wall, question.lay.joint.min), question.lay);
  const integer = time(
    "  mixed-integer model (slivers, halves, balance)",
    { warmup: 1, rounds: 7 },
    () => highs.solve(model),
  );
  const { score } = subject.choose(plan, wall, question.lay).choice!.chosen;
  const optimum = highs.solve(model);
  return {
    timings: [chosen, brute.timing, integer],
    bars: [
      { name: "choosing a start", found: chosen.median, limit: 50, sense: "under", unit: "ms" },
    ],
    note: [
      `Choosing is ${ratio(brute.timing, chosen)} times as fast as brute force in steps of 1/64 in`,
      `(1 in ${SAMPLE} of its ${brute.starts} starts was timed, and scaled) and`,
      `${ratio(integer, chosen)} times as fast as the mixed-integer model, which weighs less: no`,
      `cuts and no tiles. Chosen: ${JSON.stringify(score)}; the model's optimum:`,
      `${optimum.Status}, ${optimum.ObjectiveValue.toFixed(6)} (in of imbalance, when under 1000).`,
    ].join("\n"),
  };
}

function ratio(slow: Timing, fast: Timing): string {
  return (slow.median / fast.median).toFixed(1);
}

function timeBruteForce(
  subject: Subject,
  { plan, wall, lay }: Question,
): { timing: Timing; starts: number } {
  const region = subject.regionOf(plan, wall, lay.joint.min);
  const grid = subject.latticeOf(lay, lay.joint.min, 0, 0);
  const [columns, rows] = [subject.moduleAcross(grid), subject.moduleUp(grid)].map((module) =>
    Math.ceil(module / STEP),
  );
  const starts = columns! * rows!;
  const begun = performance.now();
  // A stride that shares no factor with the grid spreads the sample over all of it.
  for (let i = 0; i < starts; i += SAMPLE + 1) {
    const x = region.bounds.left + (i % columns!) * STEP;
    const y = region.bounds.bottom + Math.floor(i / columns!) * STEP;
    const { lattice, pieces } = subject.layPieces(
      region,
      subject.latticeOf(lay, lay.joint.min, x, y),
    );
    sink.value = subject.scoreOf(wall, { region, lay, lattice, pieces }, plan.limits);
  }
  const spent = (performance.now() - begun) * (SAMPLE + 1);
  return { timing: summarise("  brute force, 1/64 in, scaled", [spent]), starts };
}
