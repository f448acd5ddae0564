import "mocha/mocha.js";
import { hands } from "./hands.js";
import { tell } from "./telling.js";

/** Called by the editor in a browser's extension host. */
export async function run(): Promise<void> {
  mocha.setup({
    ui: "bdd",
    timeout: 30_000,
    reporter: silentReporter as unknown as Mocha.ReporterConstructor,
  });
  await import("./web/browser.suite.js");
  const runner = await new Promise<Mocha.Runner>((resolve) => {
    const started = mocha.run();
    resolve(started);
  });
  const counts = await tell(runner);
  await hands.report(counts);
  if (counts.failed > 0) throw new Error(`${counts.failed} tests failed`);
}

/** The report is told elsewhere. */
function silentReporter(): void {
  // Nothing to show: a browser's extension host has no page.
}
