// Bundles the programs into dist/. Of the command line, cli.cjs starts it, cli/main.cjs is the program,
// cli/worker.cjs what its worker threads run, and cli/drawing.cjs what draws pictures; the editor's
// are listed in bundle-extension.mjs.
import { build } from "esbuild";
import { spawnSync } from "node:child_process";
import { rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { bundleExtension } from "./.scripts/editor/bundle-extension.mjs";

const root = fileURLToPath(new URL(".", import.meta.url));

/** Leaves the drawing out of the program, for its own bundle. */
const drawingApart = {
  name: "drawing-apart",
  setup({ onResolve }) {
    onResolve({ filter: /\/drawing\/headless\.js$/ }, ({ kind }) =>
      kind === "dynamic-import" ? { path: "./drawing.cjs", external: true } : null,
    );
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
  plugins: [drawingApart],
  logLevel: "warning",
};

// Machine code of an older build must never meet a newer program.
rmSync(`${root}dist/cli`, { recursive: true, force: true });
await build({ ...COMMON, entryPoints: ["src/cli/start.ts"], outfile: "dist/cli.cjs" });
await build({ ...COMMON, entryPoints: ["src/cli/main.ts"], outfile: "dist/cli/main.cjs" });
await build({ ...COMMON, entryPoints: ["src/cli/worker.ts"], outfile: "dist/cli/worker.cjs" });
await build({
  ...COMMON,
  entryPoints: ["src/drawing/headless.ts"],
  outfile: "dist/cli/drawing.cjs",
  // svgdom asks where it stands, to find the font it would measure texts with.
  banner: { js: 'const here=require("node:url").pathToFileURL(__filename).href;' },
  define: { "import.meta.url": "here" },
});

const cached = spawnSync(process.execPath, [`${root}.scripts/cache-code.cjs`], { cwd: root });
if (cached.status !== 0) console.warn(`No code cache was made: ${cached.stderr}`);

await bundleExtension();
