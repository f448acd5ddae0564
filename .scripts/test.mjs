// Everything that has to hold, in order; goes on after a failure, so that one run tells all of it.
// The closing line counts the tests, and each other step that failed as one failure.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { runEditorTests } from "./editor/run.mjs";
import { runScript, runTool } from "./steps.mjs";

const STEPS = [
  ["build", () => runScript("esbuild.config.mjs")],
  ["types", () => runTool("typescript/bin/tsc", "-p", "tsconfig.json")],
  ["types of the core", () => runTool("typescript/bin/tsc", "-p", "tsconfig.core.json")],
  ["lint", () => runTool("eslint/bin/eslint.js", ".")],
  ["format", () => runTool("prettier/bin/prettier.cjs", "--check", "--log-level", "warn", ".")],
  ["a test for each source file", () => runScript(".scripts/untested.mjs")],
];

const failedSteps = STEPS.filter(([name, run]) => {
  console.log(`- ${name}`);
  return !run();
}).map(([name]) => name);

const runs = [runMocha(), await runEditorTests()];
const sum = (key) => runs.reduce((total, counts) => total + counts[key], 0);
for (const name of failedSteps) console.log(`Failed: ${name}`);
const passed = sum("passed");
const failed = sum("failed") + failedSteps.length;
const skipped = sum("skipped");
console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
// Where everything has to run, what was skipped is a failure, too.
const missed = process.env.GAUGELATH_SKIPS === "fail" && skipped > 0;
process.exitCode = failed > 0 || passed === 0 || missed ? 1 : 0;

/** Runs the tests; a run that broke off before it could count is a failure. */
function runMocha() {
  const folder = mkdtempSync(path.join(tmpdir(), "gaugelath-test-"));
  const file = path.join(folder, "counts.json");
  try {
    const option = `counts=${file}`;
    const clean = runTool(
      "mocha/bin/mocha.js",
      ...["--reporter", ".scripts/counting-reporter.cjs", "--reporter-option", option],
      "test/**/*.test.ts",
    );
    const { passes, failures, pending } = JSON.parse(readFileSync(file, "utf8"));
    return { passed: passes, failed: Math.max(failures, clean ? 0 : 1), skipped: pending };
  } catch (error) {
    console.error(`The tests broke off: ${error.message}`);
    return { passed: 0, failed: 1, skipped: 0 };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
