import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { bundleProgram } from "../support/bundle-program.js";

export type Subject = typeof import("./subject.js");

/** Bundles the engine with the command line's own settings, and loads it. */
export async function loadSubject(): Promise<Subject> {
  const folder = mkdtempSync(path.join(tmpdir(), "gaugelath-bench-"));
  const outfile = path.join(folder, "subject.mjs");
  try {
    await bundleProgram(new URL("subject.ts", import.meta.url), outfile, { minify: true });
    return (await import(pathToFileURL(outfile).href)) as Subject;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
