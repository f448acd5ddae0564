/**
 * How wide a text can get. A picture is measured where there is no page and read where the font may
 * be another, so each letter counts as wide as in the widest of DejaVu Sans, Open Sans and the fonts
 * with Helvetica's widths. Advance widths in hundredths of an em, from U+0020 to U+007E.
 */
// prettier-ignore
const REGULAR = [
  32, 41, 46, 84, 64, 96, 78, 28, 40, 40, 56, 84, 32, 37, 32, 37, // space to /
  64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 56, // 0 to ?
  102, 69, 69, 73, 78, 67, 62, 78, 76, 30, 50, 67, 56, 91, 76, 79, // @ to O
  67, 79, 73, 67, 62, 74, 69, 99, 69, 67, 69, 40, 37, 40, 84, 56, // P to _
  58, 62, 64, 55, 64, 62, 36, 64, 64, 28, 28, 58, 28, 98, 64, 62, // ` to o
  64, 64, 42, 53, 40, 64, 60, 82, 60, 60, 53, 64, 56, 64, 84, //     p to ~
];

// prettier-ignore
const BOLD = [
  35, 46, 53, 84, 70, 101, 88, 31, 46, 46, 53, 84, 38, 42, 38, 37,
  70, 70, 70, 70, 70, 70, 70, 70, 70, 70, 40, 40, 84, 84, 84, 62,
  100, 78, 77, 74, 84, 69, 69, 83, 84, 38, 56, 78, 64, 100, 84, 86,
  74, 86, 78, 73, 69, 82, 78, 111, 78, 73, 73, 46, 37, 46, 84, 56,
  50, 68, 72, 60, 72, 68, 44, 72, 72, 35, 35, 67, 35, 105, 72, 69,
  72, 72, 50, 60, 48, 72, 66, 93, 65, 66, 59, 72, 37, 72, 84,
];

/** Any letter outside the table; the widest Latin one (a digraph) measures 1.56. */
const OTHER = 160;

/** Signs that the picture itself prints. */
const SIGNS: Readonly<Record<string, number>> = { "×": 84, "–": 56, "…": 100, "±": 84, "·": 38 };

export type Weight = "regular" | "bold";

/** The widest that a text of this size can be, in the size's own unit. */
export function textWidth(text: string, size: number, weight: Weight = "regular"): number {
  const table = weight === "bold" ? BOLD : REGULAR;
  let hundredths = 0;
  for (const letter of text) {
    hundredths += table[letter.codePointAt(0)! - 0x20] ?? SIGNS[letter] ?? OTHER;
  }
  return (hundredths * size) / 100;
}

/** The text, or as much of its beginning as fits in `width` with an ellipsis. */
export function fitText(text: string, width: number, size: number, weight?: Weight): string {
  if (textWidth(text, size, weight) <= width) return text;
  let kept = "";
  let used = textWidth("…", size, weight);
  for (const letter of text) {
    used += textWidth(letter, size, weight);
    if (used > width) break;
    kept += letter;
  }
  return `${kept.trimEnd()}…`;
}

/** Lines break at spaces, but not inside `4 3/4 in`. */
const BREAKS = / (?!\d+\/\d+|(?:in|mm|cm|m)\b)/;

/** The text in lines no wider than `width`, broken at spaces; what is past `most` lines is cut off. */
export function wrapText(text: string, width: number, size: number, most = 12): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(BREAKS)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line === "" || textWidth(longer, size) <= width) {
      line = longer;
      continue;
    }
    lines.push(line);
    line = word;
  }
  lines.push(line);
  const kept = lines.slice(0, most);
  if (lines.length > most) kept[most - 1] = `${kept[most - 1]!} …`;
  return kept.map((each) => fitText(each, width, size));
}
