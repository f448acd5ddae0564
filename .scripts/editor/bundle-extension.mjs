// Bundles the editor's programs into dist/: the extension, one file for both kinds of extension host;
// what runs beside it, one file too; and the preview's script.
import { build } from "esbuild";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { recordPackages } from "../bundled-packages.mjs";
import { gaugelath } from "../examples.mjs";
import { leanGrammar } from "../lean-grammar.mjs";
import { ROOT } from "../steps.mjs";

const COMMON = {
  absWorkingDir: ROOT,
  bundle: true,
  minify: true,
  target: "es2022",
  metafile: true,
  logLevel: "warning",
};
const BOTH_HOSTS = {
  ...COMMON,
  platform: "node",
  // The protocol's packages have one face for Node, and one for workers.
  conditions: ["node", "browser"],
};

/** What runs beside the editor: three programs that are nearly the same, so one file holds them. */
const BESIDE = `
  if (typeof importScripts === "function") import("./server/server.web.js");
  else if (process.argv[2] === "check") import("./cli/check-task.js");
  else import("./server/server.node.js");
`;

/** A check draws nothing: what draws for comparisons of the command line is left out. */
const drawsNothing = {
  name: "draws-nothing",
  setup({ onResolve }) {
    onResolve({ filter: /\/drawing\/headless\.js$/ }, () => ({
      path: "./cli/drawing.cjs",
      external: true,
    }));
  },
};

/**
 * The client matches files by patterns of names where a server asks to hear of files that are renamed,
 * or to be asked for diagnostics of some. Ours does neither: plans are told by their language.
 */
const NO_PATTERNS =
  "export class Minimatch { constructor(glob) { throw new Error(`No file is matched by ${glob}`); } }";

const matchesNoPatterns = {
  name: "matches-no-patterns",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^minimatch$/ }, () => ({ path: "minimatch", namespace: "stand-in" }));
    onLoad({ filter: /.*/, namespace: "stand-in" }, () => ({ contents: NO_PATTERNS }));
  },
};

const BUNDLES = [
  {
    ...BOTH_HOSTS,
    format: "cjs",
    entryPoints: ["src/extension/extension.ts"],
    to: "dist/extension.js",
    external: ["vscode"],
    plugins: [matchesNoPatterns],
  },
  {
    ...BOTH_HOSTS,
    format: "iife",
    stdin: { contents: BESIDE, resolveDir: path.join(ROOT, "src") },
    to: "dist/server.js",
    plugins: [drawsNothing, leanGrammar],
  },
  {
    ...COMMON,
    platform: "browser",
    format: "iife",
    entryPoints: ["src/preview/main.ts"],
    to: "dist/preview.js",
  },
];

/** Makes the bundles, and the walkthrough's picture; the command line must stand in dist/ already. */
export async function bundleExtension() {
  await Promise.all(
    BUNDLES.map(async ({ to, ...options }) => {
      const { metafile } = await build({ ...options, outfile: to });
      recordPackages(to, metafile);
    }),
  );
  gaugelath("draw", "media/walkthrough/first-wall.tileplan", "-o", "dist/first-wall.svg");
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundleExtension();
