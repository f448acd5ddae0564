/** Lines break at spaces, but not inside `4 3/4 in`: the figure and its unit are read together. */
export const BREAKS = / +(?!\d+\/\d+|(?:in|ft|mm|cm|m)\b)/;

/**
 * A text in lines no wider than `width`: broken at spaces, and where a word alone is too wide, between
 * its letters. A line feed begins a new line.
 */
export function wrapLines(
  text: string,
  width: number,
  widthOf: (text: string) => number,
): string[] {
  return text.split("\n").flatMap((part) => wrapPart(part, width, widthOf));
}

function wrapPart(text: string, width: number, widthOf: (text: string) => number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.trim().split(BREAKS)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (widthOf(longer) <= width) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    const pieces = brokenWord(word, width, widthOf);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1)!;
  }
  lines.push(line);
  return lines;
}

/** The word, or as many parts of it as it takes; a part has a letter at least. */
function brokenWord(word: string, width: number, widthOf: (text: string) => number): string[] {
  if (widthOf(word) <= width) return [word];
  const parts: string[] = [];
  let part = "";
  for (const letter of word) {
    if (part !== "" && widthOf(part + letter) > width) {
      parts.push(part);
      part = "";
    }
    part += letter;
  }
  parts.push(part);
  return parts;
}
