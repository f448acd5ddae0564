// The print font for dist/fonts/: Open Sans (SIL Open Font License), of which only the letters are
// kept that plans in European languages need, without hints for coarse screens, and without kerning and
// other features: reading those takes half of the time that a sheet takes.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import subsetFont from "subset-font";
import { ROOT } from "./steps.mjs";

/** The folder of the package that the font is taken from. */
export const FONT_PACKAGE = "node_modules/@expo-google-fonts/open-sans";
const FILES = {
  regular: "400Regular/OpenSans_400Regular.ttf",
  bold: "700Bold/OpenSans_700Bold.ttf",
};

/** Blocks of Unicode, first and last letter. */
const LETTERS = [
  [0x20, 0x7e], // Basic Latin
  [0xa0, 0x17f], // Latin-1, Latin Extended-A
  [0x218, 0x21b], // Romanian s and t with comma
  [0x2c6, 0x2dd], // accents that stand alone
  [0x370, 0x3ff], // Greek
  [0x400, 0x45f], // Cyrillic
  [0x490, 0x491], // Ukrainian g
  [0x1e9e, 0x1e9e], // capital sharp s
  [0x2010, 0x2044], // dashes, quotation marks, dots, the fraction slash
  [0x20ac, 0x20ac], // euro
  [0x2116, 0x2122], // numero, trade mark
  [0x2150, 0x215e], // fractions
  [0x2212, 0x2265], // minus, signs of comparing
  [0xfffd, 0xfffd], // what stands for a letter that is not here
];

/** Writes dist/fonts/regular.ttf and bold.ttf. */
export async function subsetFonts() {
  const folder = path.join(ROOT, "dist", "fonts");
  mkdirSync(folder, { recursive: true });
  const letters = LETTERS.flatMap(([first, last]) =>
    Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)),
  ).join("");
  for (const [name, file] of Object.entries(FILES)) {
    const whole = readFileSync(path.join(ROOT, FONT_PACKAGE, file));
    const kept = await subsetFont(whole, letters, {
      targetFormat: "truetype",
      noHinting: true,
      dropTables: ["GSUB", "GPOS", "GDEF"],
    });
    writeFileSync(path.join(folder, `${name}.ttf`), kept);
  }
}
