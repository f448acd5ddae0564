// Bundles what prints sheets (src/sheets/print.ts) into dist/print.js: one file for every host, Node's
// programs and a browser's worker, since few parts of the product are as large. Beside it the print
// font, and the rasteriser's program.
import { build } from "esbuild";
import { copyFileSync, readFileSync } from "node:fs";
import path from "node:path";
import { recordPackages } from "./bundled-packages.mjs";
import { trueTypeAlone } from "./slim-fontkit.mjs";
import { slimWriters } from "./slim-writers.mjs";
import { ROOT } from "./steps.mjs";
import { subsetFonts } from "./subset-fonts.mjs";

/** svgdom asks where it stands, for the font it would measure texts with: nothing is measured. */
const PATHS =
  "export const join = (...parts) => parts.join('/'); export const dirname = (file) => file;" +
  "export const resolve = join; export default { join, dirname, resolve };";

/** Modules that the packages name and nothing here calls, as what stands in for them. */
const STAND_INS = {
  "image-size": "export default () => ({});",
  // Lines are broken by our own layout (src/sheets/print/): the tables of every script, which these
  // unpack as soon as they are loaded, are never asked.
  linebreak: "export default class {}",
  "unicode-properties":
    "export const isMark = (code) => /\\p{M}/u.test(String.fromCodePoint(code));",
  // Node's own packing is native, and ten times as fast.
  fflate:
    "import { zlibSync as packed } from 'fflate';" +
    "const node = globalThis.process?.getBuiltinModule?.('node:zlib');" +
    "export const zlibSync = node ? (data) => node.deflateSync(data) : packed;",
  // No picture of pixels goes into a PDF, and none is locked.
  "png-js": "export default class {}",
  "@noble/ciphers/aes": "export const cbc = null; export const ecb = null;",
  // Letters are printed as they are: an entity's name is never looked up.
  "decode-named-character-reference": "export const decodeNamedCharacterReference = () => false;",
  // svgdom reads SVG with it; here it is only written.
  sax: "export default {};",
  "node:path": PATHS,
  path: PATHS,
  "node:url": "export const fileURLToPath = (url) => url;",
};

const standIns = {
  name: "stand-ins",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^[^.]/ }, ({ path: name, namespace }) =>
      // A stand-in may name what it stands for.
      Object.hasOwn(STAND_INS, name) && namespace !== "stand-in"
        ? { path: name, namespace: "stand-in" }
        : null,
    );
    onLoad({ filter: /.*/, namespace: "stand-in" }, (found) => ({
      contents: STAND_INS[found.path],
      resolveDir: ROOT,
    }));
  },
};

/**
 * A worker has no Buffer. The build of csv-stringify for browsers brings a whole one, three times as
 * large as the rest of it; all that is asked of it is the mark at the start of a file, as text.
 */
const withoutBuffer = {
  name: "without-buffer",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^csv-stringify\/sync$/ }, () => ({
      path: path.join(ROOT, "node_modules", "csv-stringify", "lib", "sync.js"),
    }));
    onLoad({ filter: /[\\/]csv-stringify[\\/]lib[\\/].*\.js$/ }, ({ path: file }) => ({
      contents: `${BUFFER}\n${readFileSync(file, "utf8")}`,
    }));
  },
};

const BUFFER =
  "const Buffer = { isBuffer: () => false," +
  " from: (bytes) => new TextDecoder('utf-8', { ignoreBOM: true }).decode(Uint8Array.from(bytes)) };";

/** In a worker there is no `module`: what prints is found as `gaugelathPrint`. */
const FOOTER = "if(typeof module==='object')module.exports=gaugelathPrint;";

const PRINT = "dist/print.js";

export async function bundlePrint() {
  const { metafile } = await build({
    absWorkingDir: ROOT,
    entryPoints: ["src/sheets/print.ts"],
    outfile: PRINT,
    bundle: true,
    minify: true,
    platform: "browser",
    // A worker has no page.
    conditions: ["worker"],
    format: "iife",
    globalName: "gaugelathPrint",
    target: "es2022",
    plugins: [standIns, trueTypeAlone, slimWriters, withoutBuffer],
    define: { "import.meta.url": '"file:///"' },
    footer: { js: FOOTER },
    metafile: true,
    logLevel: "warning",
  });
  recordPackages(PRINT, metafile);
  await subsetFonts();
  copyFileSync(
    path.join(ROOT, "node_modules", "@resvg", "resvg-wasm", "index_bg.wasm"),
    path.join(ROOT, "dist", "resvg.wasm"),
  );
}
