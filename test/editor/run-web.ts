import "mocha/mocha.js";
import { hands } from "./hands.js";
import { tell } from "./telling.js";

/** Runs suites in a browser's extension host; each is imported once mocha listens. */
export async function runSuites(suites: readonly (() => Promise<unknown>)[]): Promise<void> {
  mocha.setup({
    ui: "bdd",
    timeout: 30_000,
    reporter: silentReporter as unknown as Mocha.ReporterConstructor,
  });
  for (const load of suites) await load();
  const counts = await tell(mocha.run());
  await hands.report(counts);
  if (counts.failed > 0) throw new Error(`${counts.failed} tests failed`);
}

/** The report is told elsewhere. */
function silentReporter(): void {
  // Nothing to show: a browser's extension host has no page.
}
