import type { Block, Page, Paper } from "../paper/paper.js";
import type { Faces } from "./faces.js";
import { Flow, SIZE } from "./flow.js";
import { layCaution } from "./lay-caution.js";
import { layPicture } from "./lay-picture.js";
import { layPole } from "./lay-pole.js";
import { layTable } from "./lay-table.js";
import { layHeading, layList, layText } from "./lay-text.js";
import { MARGIN, type PaperSize } from "./paper-size.js";
import type { Sheet, TextMark } from "./sheet.js";

/** A paper laid out on sheets. */
export interface LaidPaper {
  readonly title: string;
  readonly revision: string | null;
  readonly sheets: readonly Sheet[];
  /** Letters that the print font doesn't have, each once: a sign stands in their place. */
  readonly missing: readonly string[];
}

/** Lays a paper out: each page begins on a sheet of its own, and every sheet has its number. */
export function layOut(paper: Paper, size: PaperSize, faces: Faces): LaidPaper {
  const missing = new Set<string>();
  const sheets = paper.pages.flatMap((page) => layPage(paper, page, size, faces, missing));
  const numbered = sheets.map((sheet, i) => withNumber(sheet, i + 1, sheets.length, faces));
  const { title, revision } = paper;
  return { title, revision, sheets: numbered, missing: [...missing] };
}

function layPage(
  { title: plan, revision }: Paper,
  { id, title, blocks }: Page,
  size: PaperSize,
  faces: Faces,
  missing: Set<string>,
): readonly Sheet[] {
  const flow = new Flow({ page: id, title, plan, revision }, size, faces);
  for (const block of blocks) layBlock(flow, block);
  if (flow.missing.size > 0) layText(flow, missingWords([...flow.missing], faces));
  for (const letter of flow.missing) missing.add(letter);
  return flow.finish();
}

function layBlock(flow: Flow, block: Block): void {
  switch (block.kind) {
    case "heading": {
      layHeading(flow, block.text);
      return;
    }
    case "text": {
      layText(flow, block.text);
      return;
    }
    case "caution": {
      layCaution(flow, block.lines);
      return;
    }
    case "list": {
      layList(flow, block.items, block.numbered);
      return;
    }
    case "table": {
      layTable(flow, block);
      return;
    }
    case "picture": {
      layPicture(flow, block.scene, block.caption);
      return;
    }
    case "pole": {
      layPole(flow, block);
      return;
    }
  }
}

/** Letters that can't be printed are told by their numbers. */
function missingWords(letters: readonly string[], faces: Faces): string {
  const named = letters.map((letter) => {
    const code = letter.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0");
    return `U+${code}`;
  });
  const signs = faces.printable(letters[0]!);
  return `The print font has no letter for ${named.join(", ")}: ${signs} stands there instead.`;
}

function withNumber(sheet: Sheet, number: number, of: number, faces: Faces): Sheet {
  const size = SIZE.small;
  const text = `${number} of ${of}`;
  const width = faces.widthOf(text, size);
  const y = sheet.height - MARGIN;
  const mark = { kind: "text", y, size, weight: "regular" } as const;
  const marks: TextMark[] = [{ ...mark, text, width, x: sheet.width - MARGIN - width }];
  return { ...sheet, marks: [...sheet.marks, ...marks] };
}
