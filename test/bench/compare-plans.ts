import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import type { Subject } from "./bundle.js";
import { example } from "./plans.js";
import { summarise, time, timeInTurn, type Timing } from "./statistics.js";
import type { Bar } from "./table.js";

const NAME = "three-walls.tileplan";
const CLI = fileURLToPath(new URL("../../dist/cli.cjs", import.meta.url));
const EXAMPLES = fileURLToPath(new URL("../../examples/", import.meta.url));
const MANY = 1000;

interface Result {
  readonly timings: Timing[];
  readonly bars: Bar[];
  readonly note: string;
}

/** Comparing the three-wall example with a moved niche: in a warm engine, and as a whole process. */
export function benchCompare(subject: Subject): Result {
  const { text, source } = example(NAME);
  const moved = withMovedNiche(text);
  const warm = time("compare: read, solve and check both", { warmup: 10, rounds: 41 }, (round) => {
    const [before, after] = [text, moved].map((each) => subject.run(`${each}# ${round}\n`, source));
    return [...subject.comparisonText(subject.compare(before!, after!))];
  });
  const folder = copies({ "a/stock.tileplan": stock(), [`a/${NAME}`]: text, [`b/${NAME}`]: moved });
  try {
    writeFileSync(path.join(folder, "b", "stock.tileplan"), stock());
    const [whole, start] = Object.values(
      timeInTurn(
        { warmup: 3, rounds: 21 },
        {
          "gaugelath compare, process": () => spawn(folder, "compare", `a/${NAME}`, `b/${NAME}`),
          "  gaugelath --version, process": () => spawn(folder, "--version"),
        },
      ),
    );
    const beyond = whole!.median - start!.median;
    return {
      timings: [warm, whole!, start!],
      bars: [
        {
          name: "compare, beyond gaugelath --version",
          found: beyond,
          limit: 100,
          sense: "under",
          unit: "ms",
        },
      ],
      note: "",
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A thousand plans, checked by one thread and by all, and compared. */
export function benchPortfolio(): Result {
  const { text } = example(NAME);
  const niche = readFileSync(path.join(EXAMPLES, "niche-wall.tileplan"), "utf8");
  const files: Record<string, string> = { "stock.tileplan": stock() };
  for (let i = 0; i < MANY - 1; i++) {
    files[`house-${i % 20}/wall-${i}.tileplan`] =
      i % 2 === 0 ? text.replace('"stock.tileplan"', '"../stock.tileplan"') : `${niche}# ${i}\n`;
  }
  const folder = copies(files);
  try {
    const all = timed(folder, "check", ".");
    const half = ["1/2", "2/2"].map((shard) => timed(folder, "check", ".", "--shard", shard));
    const rate = (MANY / all) * 1000;
    return {
      timings: [summarise(`check of ${MANY} plans, ${availableParallelism()} cores`, [all])],
      bars: [],
      note:
        `${MANY} plans are checked in ${(all / 1000).toFixed(2)} s on ${availableParallelism()} ` +
        `cores: ${rate.toFixed(0)} plans a second; the two halves by --shard take ` +
        `${half.map((ms) => `${(ms / 1000).toFixed(2)} s`).join(" and ")}.`,
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function withMovedNiche(text: string): string {
  return text.replace("at 14 5/16, 54 3/4", "at 15 5/16, 55 3/4");
}

function stock(): string {
  return readFileSync(path.join(EXAMPLES, "stock.tileplan"), "utf8");
}

function copies(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(path.join(tmpdir(), "gaugelath-bench-"));
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
    writeFileSync(path.join(folder, name), text);
  }
  return folder;
}

function timed(folder: string, ...words: readonly string[]): number {
  const begun = performance.now();
  spawn(folder, ...words);
  return performance.now() - begun;
}

/** Exit 1 says that something was found, which is no failure here. */
function spawn(folder: string, ...words: readonly string[]): void {
  const { status, stderr } = spawnSync(process.execPath, [CLI, ...words], {
    cwd: folder,
    encoding: "utf8",
    maxBuffer: 1 << 28,
  });
  if (status !== 0 && status !== 1) throw new Error(stderr);
}
