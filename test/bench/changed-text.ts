import type { Subject } from "./bundle.js";
import { changed, example, squareWall } from "./plans.js";
import { time, type Timing } from "./statistics.js";
import type { Bar } from "./table.js";

const NAME = "three-walls.tileplan";

/** From a changed text to a new picture: the whole path, and each stage apart. */
export function benchChangedText(subject: Subject): { timings: Timing[]; bars: Bar[] } {
  const { parse, resolve, solve, check, buildScene, drawHeadless } = subject;
  const { text, source } = example(NAME);
  const rounds = { warmup: 30, rounds: 200 };
  const whole = time("changed text -> picture", rounds, (round) => {
    const { plan, diagnostics } = resolve(parse(changed(text, round)), source);
    const solved = solve(plan);
    return drawHeadless(buildScene(solved, [...diagnostics, ...check(solved)]));
  });
  const resolved = resolve(parse(text), source);
  const solved = solve(resolved.plan);
  const diagnostics = [...resolved.diagnostics, ...check(solved)];
  const scene = buildScene(solved, diagnostics);
  const tree = parse(text);
  const stages = [
    time("  parse", rounds, (round) => parse(changed(text, round))),
    time("  resolve", rounds, () => resolve(tree, source)),
    time("  solve", rounds, () => solve(resolved.plan)),
    time("  rules", rounds, () => check(solved)),
    time("  scene", rounds, () => buildScene(solved, diagnostics)),
    time("  draw", rounds, () => drawHeadless(scene)),
  ];
  return {
    timings: [whole, ...stages],
    bars: [
      { name: "changed text, median", found: whole.median, limit: 16, sense: "under", unit: "ms" },
      { name: "changed text, p95", found: whole.p95, limit: 33, sense: "under", unit: "ms" },
    ],
  };
}

/** The whole path on a wall of a hundred thousand pieces. */
export function benchManyPieces(subject: Subject): { timings: Timing[]; bars: Bar[] } {
  const { run, drawHeadless } = subject;
  const text = squareWall(100_000);
  const source = { file: "bench.tileplan", root: "", read: () => null };
  const whole = time("100,000 pieces, whole path", { warmup: 2, rounds: 9 }, (round) =>
    drawHeadless(run(`${text}# ${round}\n`, source).scene()),
  );
  return {
    timings: [whole],
    bars: [{ name: "100,000 pieces", found: whole.median, limit: 500, sense: "under", unit: "ms" }],
  };
}
