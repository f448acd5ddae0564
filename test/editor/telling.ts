import { type Counts, hands } from "./hands.js";

/** Tells each test of a run as it ends; the promise holds the counts once the last line is told. */
export function tell(runner: Mocha.Runner): Promise<Counts> {
  const counts = { passed: 0, failed: 0, skipped: 0 };
  let told: Promise<unknown> = Promise.resolve();
  const line = (text: string): void => {
    told = told.then(() => hands.tell(text));
  };
  const indent = (depth: number): string => "  ".repeat(depth + 1);
  runner.on("suite", (suite) => {
    if (!suite.root) line(indent(suite.titlePath().length) + suite.title);
  });
  runner.on("pass", (test) => {
    counts.passed++;
    line(`${indent(test.titlePath().length)}✔ ${test.title} (${test.duration ?? 0} ms)`);
  });
  runner.on("pending", (test) => {
    counts.skipped++;
    line(`${indent(test.titlePath().length)}- ${test.title} (skipped)`);
  });
  runner.on("fail", (test, error: unknown) => {
    counts.failed++;
    line(`${indent(test.titlePath().length)}✘ ${test.title}`);
    line(error instanceof Error ? (error.stack ?? error.message) : String(error));
  });
  return new Promise((resolve, reject) => {
    runner.on("end", () => {
      told.then(() => resolve(counts), reject);
    });
  });
}
