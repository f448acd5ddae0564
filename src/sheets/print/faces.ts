import { create, type Font, type GlyphRun } from "fontkit";
import type { Weight } from "./sheet.js";

/** The print font's two files (TrueType). */
export type FontFiles = Readonly<Record<Weight, Uint8Array>>;

/** What stands for a letter that the print font doesn't have. */
const STAND_IN = "\uFFFD";

/** The print font: how wide it sets a text, and which letters it has. */
export class Faces {
  readonly #fonts: Readonly<Record<Weight, Font>>;
  readonly #widths = { regular: new Map<string, number>(), bold: new Map<string, number>() };

  constructor(files: FontFiles) {
    this.#fonts = { regular: opened(files.regular), bold: opened(files.bold) };
  }

  /** The width of a line of text, in the unit of its size: letters are set without kerning. */
  widthOf(text: string, size: number, weight: Weight = "regular"): number {
    let ems = 0;
    for (const letter of text) ems += this.#widthOfLetter(letter, weight);
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

  /** The font as a writer of files takes it: it sets letter by letter, as the layout measures. */
  fontFor(weight: Weight): Font {
    const font = this.#fonts[weight];
    const layout = (text: string): Pick<GlyphRun, "glyphs" | "positions" | "advanceWidth"> => {
      const glyphs = Array.from(text, (letter) => font.glyphForCodePoint(letter.codePointAt(0)!));
      const positions = glyphs.map(({ advanceWidth: xAdvance }) => {
        return { xAdvance, yAdvance: 0, xOffset: 0, yOffset: 0 };
      });
      return {
        glyphs,
        positions,
        advanceWidth: positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0),
      };
    };
    return Object.create(font, { layout: { value: layout } }) as Font;
  }

  #widthOfLetter(letter: string, weight: Weight): number {
    const widths = this.#widths[weight];
    let ems = widths.get(letter);
    if (ems === undefined) {
      const font = this.#fonts[weight];
      const glyph = font.glyphForCodePoint(letter.codePointAt(0)!);
      ems = glyph.advanceWidth / font.unitsPerEm;
      widths.set(letter, ems);
    }
    return ems;
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
