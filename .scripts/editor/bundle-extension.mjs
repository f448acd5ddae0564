// Bundles the editor's programs into dist/: the extension and the language server, each for Node and
// for a browser's worker, and the preview's script.
import { build } from "esbuild";
import { fileURLToPath } from "node:url";
import { gaugelath } from "../examples.mjs";
import { ROOT } from "../steps.mjs";

const COMMON = {
  absWorkingDir: ROOT,
  bundle: true,
  minify: true,
  target: "es2022",
  logLevel: "warning",
};
const NODE = { ...COMMON, platform: "node", format: "cjs" };
const BROWSER = { ...COMMON, platform: "browser" };

const BUNDLES = [
  { ...NODE, from: "src/extension/extension.ts", to: "dist/extension.cjs", external: ["vscode"] },
  {
    ...BROWSER,
    format: "cjs",
    from: "src/extension/extension.web.ts",
    to: "dist/extension.web.js",
    external: ["vscode"],
  },
  { ...NODE, from: "src/server/server.ts", to: "dist/server.cjs" },
  { ...BROWSER, format: "iife", from: "src/server/server.web.ts", to: "dist/server.web.js" },
  { ...BROWSER, format: "iife", from: "src/preview/main.ts", to: "dist/preview.js" },
];

/** Makes the bundles, and the walkthrough's picture; the command line must stand in dist/ already. */
export async function bundleExtension() {
  await Promise.all(
    BUNDLES.map(({ from, to, ...options }) =>
      build({ ...options, entryPoints: [from], outfile: to }),
    ),
  );
  gaugelath("draw", "media/walkthrough/first-wall.tileplan", "-o", "dist/first-wall.svg");
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundleExtension();
