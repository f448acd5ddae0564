import { fork } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import path from "node:path";
import { bundleProgram } from "./bundle-program.js";

/** Seeds in a row. */
export interface Seeds {
  readonly from: number;
  readonly many: number;
}

/**
 * Has a program of this folder take seeds in several processes, so that the processor's time of each is its own, and gives what
 * each told its parent. The program is called with the first seed, the one past its last, and these words.
 *
 * It is bundled as the command line is, so that what it takes is what that would: a loader of TypeScript wraps each
 * function that is made, and a search makes them by the million.
 */
export async function takeInShares<Taken>(
  program: string,
  { from, many }: Seeds,
  ...words: readonly string[]
): Promise<Taken[]> {
  const folder = mkdtempSync(path.join(tmpdir(), "gaugelath-shares-"));
  const shares = Math.min(4, availableParallelism());
  const own = new URL(program, import.meta.url);
  const file = path.join(folder, "program.mjs");
  const place = (share: number) => String(from + Math.round((many * share) / shares));
  try {
    // Examples are found from where the program stands, not its bundle.
    const define = { "import.meta.url": JSON.stringify(own.href) };
    await bundleProgram(own, file, { define });
    return await Promise.all(
      Array.from({ length: shares }, (_, share) =>
        take<Taken>(file, [place(share), place(share + 1), ...words]),
      ),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function take<Taken>(file: string, words: readonly string[]): Promise<Taken> {
  return new Promise((resolve, reject) => {
    const child = fork(file, words, { execArgv: [] });
    child.once("message", (taken: Taken) => resolve(taken));
    child.once("error", reject);
    child.once("exit", (code) => {
      if (code !== 0) reject(new Error(`${words.join(" ")}: the process ended with ${code}`));
    });
  });
}
