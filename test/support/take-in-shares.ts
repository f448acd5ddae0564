import { build } from "esbuild";
import { fork } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";

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
  const place = (share: number) => String(from + Math.round((many * share) / shares));
  try {
    const file = await bundled(program, folder);
    return await Promise.all(
      Array.from({ length: shares }, (_, share) =>
        take<Taken>(file, [place(share), place(share + 1), ...words]),
      ),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function bundled(program: string, folder: string): Promise<string> {
  const file = path.join(folder, "program.mjs");
  const own = new URL(program, import.meta.url);
  await build({
    entryPoints: [fileURLToPath(own)],
    outfile: file,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    banner: {
      js: 'import{createRequire as gaugelathRequire}from"node:module";const require=gaugelathRequire(import.meta.url);',
    },
    // Examples are found from this folder.
    define: { "import.meta.url": JSON.stringify(own.href) },
    logLevel: "warning",
  });
  return file;
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
