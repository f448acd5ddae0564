// Bundles the suites of test/editor/ for the editor's extension hosts, into dist/test/editor/.
import { build } from "esbuild";
import { mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { ROOT } from "../steps.mjs";

const FROM = path.join(ROOT, "test", "editor");
const TO = path.join(ROOT, "dist", "test", "editor");

/** The module with `run()` that the editor loads for a sitting. */
export function testsOf(sitting) {
  return path.join(TO, sitting.web ? "run-web.js" : "run.js");
}

/** The suites of a sitting, without their folder. */
export function suitesOf({ name }) {
  return readdirSync(path.join(FROM, name)).filter((file) => file.endsWith(".suite.ts"));
}

export async function bundleTests(sittings) {
  rmSync(TO, { recursive: true, force: true });
  mkdirSync(TO, { recursive: true });
  // The project's own package.json makes .js files ES modules; these are not.
  writeFileSync(path.join(TO, "package.json"), JSON.stringify({ type: "commonjs" }));
  const node = sittings.filter((sitting) => !sitting.web);
  const suites = node.flatMap((sitting) =>
    suitesOf(sitting).map((file) => path.join(FROM, sitting.name, file)),
  );
  await build({
    ...COMMON,
    entryPoints: [path.join(FROM, "run.ts"), ...suites],
    outbase: FROM,
    outdir: TO,
    platform: "node",
    external: ["vscode", "mocha"],
  });
  await build({
    ...COMMON,
    stdin: { contents: webEntry(), resolveDir: FROM, sourcefile: "run-web-suites.ts" },
    outfile: path.join(TO, "run-web.js"),
    platform: "browser",
    format: "iife",
    globalName: "tests",
    // Node's `util`, for browsers, asks its process how much to tell.
    banner: { js: "const process = { env: {} };" },
    footer: { js: "module.exports = tests;" },
    external: ["vscode"],
    // The suites' assertions are Node's; this is their counterpart for browsers.
    alias: { "node:assert/strict": path.join(FROM, "assert-web.ts") },
    // Mocha's bundle for browsers would take the module of the editor for its own.
    define: { global: "globalThis", module: "undefined", exports: "undefined" },
  });
}

const COMMON = {
  bundle: true,
  format: "cjs",
  target: "es2022",
  sourcemap: "inline",
  logLevel: "warning",
};

/** A browser's extension host has no folder to look for suites in: the bundle names them. */
function webEntry() {
  const suites = suitesOf({ name: "web" }).map((file) => `() => import("./web/${file}")`);
  return `import { runSuites } from "./run-web.js";
    export const run = () => runSuites([${suites.join(", ")}]);`;
}
