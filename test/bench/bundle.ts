import { build } from "esbuild";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

export type Subject = typeof import("./subject.js");

/** Bundles the engine with the command line's own settings, and loads it. */
export async function loadSubject(): Promise<Subject> {
  const folder = mkdtempSync(path.join(tmpdir(), "gaugelath-bench-"));
  const outfile = path.join(folder, "subject.mjs");
  try {
    await build({
      entryPoints: [fileURLToPath(new URL("subject.ts", import.meta.url))],
      outfile,
      bundle: true,
      minify: true,
      platform: "node",
      format: "esm",
      target: "node20",
      banner: {
        js: 'import{createRequire as gaugelathRequire}from"node:module";const require=gaugelathRequire(import.meta.url);',
      },
      logLevel: "warning",
    });
    return (await import(pathToFileURL(outfile).href)) as Subject;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
