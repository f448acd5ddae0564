// Bundles the programs into dist/. Of the command line, cli.cjs starts it, cli/main.cjs is the program,
// cli/worker.cjs what its worker threads run, cli/drawing.cjs what draws pictures, and cli/sheet.cjs what
// makes sheets, with print.js, which prints them (bundle-print.mjs); the editor's are listed in
// bundle-extension.mjs.
import { build } from "esbuild";
import { spawnSync } from "node:child_process";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { bundlePrint } from "./.scripts/bundle-print.mjs";
import { bundleExtension } from "./.scripts/editor/bundle-extension.mjs";
import { leanGrammar } from "./.scripts/lean-grammar.mjs";

const root = fileURLToPath(new URL(".", import.meta.url));

/** Leaves what few commands need out of the program, for bundles of its own. */
const apart = {
  name: "apart",
  setup({ onResolve }) {
    const leaveOut = (filter, path) =>
      onResolve({ filter }, ({ kind }) =>
        kind === "dynamic-import" ? { path, external: true } : null,
      );
    leaveOut(/\/drawing\/headless\.js$/, "./drawing.cjs");
    leaveOut(/^\.\/sheet\.js$/, "./sheet.cjs");
    onResolve({ filter: /\/sheets\/print\.js$/ }, () => ({ path: "../print.js", external: true }));
  },
};

const COMMON = {
  absWorkingDir: root,
  bundle: true,
  minify: true,
  platform: "node",
  format: "cjs",
  target: "node20",
  supported: { "dynamic-import": false },
  plugins: [apart, leanGrammar],
  logLevel: "warning",
};

// Machine code of an older build must never meet a newer program.
rmSync(`${root}dist/cli`, { recursive: true, force: true });
rmSync(`${root}dist/print.v8`, { force: true });
// Its .js files are for Node and for workers, which take no ES modules; workers take no other ending.
mkdirSync(`${root}dist`, { recursive: true });
writeFileSync(`${root}dist/package.json`, '{ "type": "commonjs" }\n');
await build({ ...COMMON, entryPoints: ["src/cli/start.ts"], outfile: "dist/cli.cjs" });
await build({ ...COMMON, entryPoints: ["src/cli/main.ts"], outfile: "dist/cli/main.cjs" });
await build({ ...COMMON, entryPoints: ["src/cli/worker.ts"], outfile: "dist/cli/worker.cjs" });
await build({ ...COMMON, entryPoints: ["src/cli/sheet.ts"], outfile: "dist/cli/sheet.cjs" });
await bundlePrint();
await build({
  ...COMMON,
  entryPoints: ["src/drawing/headless.ts"],
  outfile: "dist/cli/drawing.cjs",
  // svgdom asks where it stands, to find the font it would measure texts with.
  banner: { js: 'const here=require("node:url").pathToFileURL(__filename).href;' },
  define: { "import.meta.url": "here" },
});

await bundleExtension();

// Machine code is made last, of files that stand as they will stay.
const making = ["--import", "tsx", `${root}.scripts/cache-code.mjs`];
const cached = spawnSync(process.execPath, making, { cwd: root });
if (cached.status !== 0) console.warn(`No code cache was made: ${cached.stderr}`);
