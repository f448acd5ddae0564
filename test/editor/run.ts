import { readdirSync } from "node:fs";
import path from "node:path";
import Mocha from "mocha";
import { hands } from "./hands.js";
import { readTask } from "./task.js";
import { tell } from "./telling.js";

/** Called by the editor in its extension host: runs the suites of the folder that the task names. */
export async function run(): Promise<void> {
  const { suites, grep } = await readTask();
  const mocha = new Mocha({ ui: "bdd", timeout: 30_000, reporter: "min" });
  if (grep) mocha.fgrep(grep);
  const folder = path.join(__dirname, suites);
  for (const file of readdirSync(folder).sort()) {
    if (file.endsWith(".suite.js")) mocha.addFile(path.join(folder, file));
  }
  const counts = await tell(mocha.run());
  await hands.report(counts);
  if (counts.failed > 0) throw new Error(`${counts.failed} tests failed`);
}
