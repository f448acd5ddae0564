// Bundles the command line. What only some commands need (the drawing, SARIF) stays in files of its
// own that are loaded on demand, so that `gaugelath check` starts fast.
import { build } from "esbuild";
import { rmSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL(".", import.meta.url));

rmSync(`${root}dist/cli`, { recursive: true, force: true });
await build({
  absWorkingDir: root,
  entryPoints: { cli: "src/cli/main.ts" },
  outdir: "dist",
  chunkNames: "cli/[name]-[hash]",
  bundle: true,
  splitting: true,
  minify: true,
  platform: "node",
  format: "esm",
  target: "node20",
  // Packages that are not ES modules reach Node's own through require.
  banner: {
    js: 'import{createRequire as gaugelathRequire}from"node:module";const require=gaugelathRequire(import.meta.url);',
  },
  logLevel: "warning",
});
