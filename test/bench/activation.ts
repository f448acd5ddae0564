import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import type { Bar } from "./table.js";

const SERVER = ".vscode-test/server";
const RUNS = 5;

/** How long VS Code says the extension took to load and activate; each run in a new editor. */
export function benchActivation(): { bars: Bar[]; note: string } {
  if (!existsSync(SERVER)) {
    return { bars: [], note: "Activation was not measured: `npm run editor` installs the editor." };
  }
  const told = Array.from({ length: RUNS }, activationOnce).sort((a, b) => a - b);
  const median = told[Math.floor(RUNS / 2)]!;
  return {
    bars: [{ name: "activation, median", found: median, limit: 100, sense: "under", unit: "ms" }],
    note: `Activation in ${RUNS} new editors, as they report it: ${told.join(", ")} ms.`,
  };
}

function activationOnce(): number {
  const words = [".scripts/editor/run.mjs", "live", "--grep=activation"];
  const run = spawnSync(process.execPath, words, { encoding: "utf8" });
  const found = /Activation: (\d+)ms/.exec(run.stdout);
  if (!found) throw new Error(`The editor told no activation time:\n${run.stdout}${run.stderr}`);
  return Number(found[1]);
}
