import { build, type BuildOptions } from "esbuild";
import { fileURLToPath } from "node:url";

/** Bundles a program of the tests, with what it loads, into a module for Node; with the command line's own settings but these. */
export async function bundleProgram(
  program: URL,
  outfile: string,
  settings: BuildOptions,
): Promise<void> {
  await build({
    entryPoints: [fileURLToPath(program)],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    banner: {
      js: 'import{createRequire as gaugelathRequire}from"node:module";const require=gaugelathRequire(import.meta.url);',
    },
    logLevel: "warning",
    ...settings,
  });
}
