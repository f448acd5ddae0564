import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { timeInTurn, type Timing } from "./statistics.js";
import type { Bar } from "./table.js";

const PACKAGE = new URL("../../package.json", import.meta.url);
const { bin } = JSON.parse(readFileSync(PACKAGE, "utf8")) as { bin: { gaugelath: string } };
const CLI = fileURLToPath(new URL(bin.gaugelath, PACKAGE));
const PLAN = fileURLToPath(new URL("../../examples/back-wall.tileplan", import.meta.url));

/** `gaugelath check` as a process of its own, against one that does nothing. */
export function benchWholeProcess(): { timings: Timing[]; bars: Bar[] } {
  if (!existsSync(CLI)) throw new Error(`${CLI} is missing: npm run build comes first`);
  const timings = timeInTurn(
    { warmup: 3, rounds: 31 },
    {
      "gaugelath check, process": () => spawn(CLI, "check", PLAN),
      "node -e 0": () => spawn("-e", "0"),
    },
  );
  const [check, nothing] = Object.values(timings);
  return {
    timings: [check!, nothing!],
    bars: [
      {
        name: "gaugelath check, over node -e 0",
        found: check!.median / nothing!.median,
        limit: 3,
        sense: "at most",
        unit: "x",
      },
    ],
  };
}

function spawn(...args: string[]): void {
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
  if (status !== 0) throw new Error(stderr);
}
