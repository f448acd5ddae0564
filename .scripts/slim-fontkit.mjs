// fontkit with TrueType alone. Its package brings its source beside the program that is made of it, one
// file that can't be taken apart: two thirds of it are the scripts of the world, PostScript outlines,
// Apple's layout and fonts of the web. The print font is TrueType, and its letters are set by our own
// layout, so of the source only what reads and cuts down such a font is taken.
import { transform } from "esbuild";
import { readFile } from "node:fs/promises";
import path from "node:path";
import { ROOT } from "./steps.mjs";

const SOURCE = path.join(ROOT, "node_modules", "fontkit", "src");

/** A font file of another kind: none is recognised. */
const NO_FORMAT = "export default { probe: () => false };";
/** What a font of another kind would be read with: one that comes to it is not the print font. */
const NOT_REACHED =
  "export default class { constructor() { throw new Error('The print font is TrueType'); } }";

/** The tables of a font that are read, by the file that reads each. */
const TABLES = {
  cmap: "cmap",
  head: "head",
  hhea: "hhea",
  hmtx: "hmtx",
  maxp: "maxp",
  name: "name",
  "OS/2": "OS2",
  post: "post",
  "cvt ": "cvt",
  fpgm: "fpgm",
  loca: "loca",
  prep: "prep",
  glyf: "glyf",
};

/** The files of its source that others stand in for. */
const STAND_INS = {
  "WOFFFont.js": NO_FORMAT,
  "WOFF2Font.js": NO_FORMAT,
  "TrueTypeCollection.js": NO_FORMAT,
  "DFont.js": NO_FORMAT,
  "glyph/CFFGlyph.js": NOT_REACHED,
  "glyph/COLRGlyph.js": NOT_REACHED,
  "glyph/GlyphVariationProcessor.js": NOT_REACHED,
  "glyph/SBIXGlyph.js": NOT_REACHED,
  "layout/LayoutEngine.js": NOT_REACHED,
  "subset/CFFSubset.js": NOT_REACHED,
  "tables/index.js": tablesFile(),
};

function tablesFile() {
  const entries = Object.entries(TABLES);
  const imports = entries.map(([, file]) => `import ${file} from "./${file}";\n`);
  // Its tables import each other: the object must be there before they have run.
  const added = entries.map(([tag, file]) => `tables["${tag}"] = ${file};\n`);
  return `${imports.join("")}const tables = {};\nexport default tables;\n${added.join("")}`;
}

export const trueTypeAlone = {
  name: "true-type-alone",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^fontkit$/ }, () => ({ path: path.join(SOURCE, "index.js") }));
    onLoad({ filter: /[\\/]fontkit[\\/]src[\\/].*\.js$/ }, async ({ path: file }) => {
      const name = path.relative(SOURCE, file).split(path.sep).join("/");
      if (Object.hasOwn(STAND_INS, name)) return { contents: STAND_INS[name] };
      return { contents: await plainScript(await readFile(file, "utf8")) };
    });
  },
};

/** Its decorators are of the older kind, which only TypeScript's compilers still know. */
async function plainScript(text) {
  const tsconfigRaw = { compilerOptions: { experimentalDecorators: true } };
  const { code } = await transform(text, { loader: "ts", target: "es2022", tsconfigRaw });
  return code;
}
