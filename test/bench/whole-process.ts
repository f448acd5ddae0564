import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { devNull } from "node:os";
import { fileURLToPath } from "node:url";
import { timeInTurn, type Timing } from "./statistics.js";
import type { Bar } from "./table.js";

const PACKAGE = new URL("../../package.json", import.meta.url);
const { bin } = JSON.parse(readFileSync(PACKAGE, "utf8")) as { bin: { gaugelath: string } };
const CLI = fileURLToPath(new URL(bin.gaugelath, PACKAGE));
const THREE_WALLS = fileURLToPath(new URL("../../examples/three-walls.tileplan", import.meta.url));
const PLAN = fileURLToPath(new URL("../../examples/back-wall.tileplan", import.meta.url));

/**
 * `gaugelath check` as a process of its own, against one that does nothing; and `gaugelath sheet` of the
 * plan of three walls, with its story poles, as PDF.
 */
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
  const sheets = timeInTurn(
    { warmup: 1, rounds: 9 },
    {
      "gaugelath sheet, process": () =>
        spawn(CLI, "sheet", THREE_WALLS, "-o", devNull, "--format", "pdf"),
    },
  );
  const [sheet] = Object.values(sheets);
  return {
    timings: [check!, nothing!, sheet!],
    bars: [
      {
        name: "gaugelath check, over node -e 0",
        found: check!.median / nothing!.median,
        limit: 3,
        sense: "at most",
        unit: "x",
      },
      {
        name: "gaugelath sheet of three walls, whole process",
        found: sheet!.median,
        limit: 1000,
        sense: "at most",
        unit: "ms",
      },
    ],
  };
}

function spawn(...args: string[]): void {
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
  if (status !== 0) throw new Error(stderr);
}
