import { create, type Font } from "fontkit";
import type { Weight } from "./sheet.js";

/** The print font's two files (TrueType). */
export type FontFiles = Readonly<Record<Weight, Uint8Array>>;

/** What stands for a letter that the print font doesn't have. */
const STAND_IN = "\uFFFD";

/** The print font: how wide it sets a text, and which letters it has. */
export class Faces {
  readonly #fonts: Readonly<Record<Weight, Font>>;
  readonly #widths = new Map<string, number>();

  constructor(readonly files: FontFiles) {
    this.#fonts = { regular: opened(files.regular), bold: opened(files.bold) };
  }

  /** The width of a line of text, in the unit of its size. */
  widthOf(text: string, size: number, weight: Weight = "regular"): number {
    const key = `${weight} ${text}`;
    let ems = this.#widths.get(key);
    if (ems === undefined) {
      const font = this.#fonts[weight];
      ems = font.layout(text).advanceWidth / font.unitsPerEm;
      this.#widths.set(key, ems);
    }
    return ems * size;
  }

  /** The text with a sign in place of each letter that the font can't print. */
  printable(text: string): string {
    return text
      .replace(/[\p{Cc}\u2028\u2029]/gu, " ")
      .replace(/[^ -~]/gu, (letter) => (this.#has(letter) ? letter : STAND_IN));
  }

  /** The letters of a text that the font doesn't have, each once. */
  missingIn(text: string): string[] {
    const letters = new Set(text.match(/[^ -~\p{Cc}\u2028\u2029]/gu));
    return [...letters].filter((letter) => !this.#has(letter));
  }

  /** The outline of a line of text that begins at 0, 0: path data, y running up, in ems. */
  outline(text: string, weight: Weight): { readonly path: string; readonly unitsPerEm: number } {
    const font = this.#fonts[weight];
    const { glyphs, positions } = font.layout(text);
    let x = 0;
    const parts: string[] = [];
    glyphs.forEach((glyph, i) => {
      const place = positions[i]!;
      parts.push(glyph.path.translate(x + place.xOffset, place.yOffset).toSVG());
      x += place.xAdvance;
    });
    return { path: parts.join(""), unitsPerEm: font.unitsPerEm };
  }

  #has(letter: string): boolean {
    return this.#fonts.regular.hasGlyphForCodePoint(letter.codePointAt(0)!);
  }
}

/** A TrueType file holds one font; only collections hold several. */
function opened(file: Uint8Array): Font {
  const font = create(file as Buffer);
  if (!("layout" in font)) throw new Error("The print font is a collection of fonts");
  return font;
}
