/** Where a line may be folded: a length such as `5 7/8 in` stays whole. */
const FOLD = /(?<![\d+-]) /;

/** A line folded to a width, its further lines drawn in; neither a word nor a length is parted. */
export function folded(line: string, width: number, indent: string): string[] {
  const lead = /^ */.exec(line)![0];
  const lines: string[] = [];
  let last = "";
  for (const word of line.slice(lead.length).split(FOLD)) {
    if (last === "") last = lead + word;
    else if (last.length + 1 + word.length <= width) last += ` ${word}`;
    else {
      lines.push(last);
      last = indent + word;
    }
  }
  return [...lines, last];
}
