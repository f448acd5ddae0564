import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { buildWallScene, type Scene } from "../../../src/drawing/index.js";
import { type Outcome, run } from "../../../src/engine.js";
import { type Block, type Paper, paperOf, type Table } from "../../../src/sheets/index.js";
import { Faces } from "../../../src/sheets/print/faces.js";
import { Flow } from "../../../src/sheets/print/flow.js";
import type { Mark, Sheet, TextMark } from "../../../src/sheets/print/sheet.js";
import type { SheetWork } from "../../../src/sheets/print/sheet-press.js";
import { takeoff } from "../../../src/takeoff/index.js";
import { exampleSource, exampleText } from "../../support/examples.js";

function fontFile(name: string): Uint8Array {
  return readFileSync(fileURLToPath(new URL(`../../../dist/fonts/${name}.ttf`, import.meta.url)));
}

/** The print font, as it is built. */
export const FONTS = { regular: fontFile("regular"), bold: fontFile("bold") };
export const FACES = new Faces(FONTS);

/** A page of letter paper that nothing stands on yet. */
export function newFlow(): Flow {
  const head = { page: "back", title: "Back wall", plan: "Test bench", revision: null };
  return new Flow(head, "letter", FACES);
}

export function paperWith(...blocks: readonly Block[]): Paper {
  const page = { id: "back", title: "Back wall", wall: "back", blocks };
  return { title: "Test bench", revision: "7", pages: [page] };
}

export function exampleOutcome(name: string): Outcome {
  return run(exampleText(name), exampleSource(name));
}

/** An example's wall as a scene for paper. */
export function exampleScene(name: string, wall = 0): Scene {
  const { solved, diagnostics } = exampleOutcome(name);
  return buildWallScene(solved, solved.walls[wall]!, diagnostics);
}

/** A table of so many rows, whose second column holds `words`. */
export function tableOf(rows: number, words = "whole"): Table {
  return {
    kind: "table",
    caption: "Courses",
    columns: [
      { title: "Course", align: "right" },
      { title: "What", align: "left" },
    ],
    rows: Array.from({ length: rows }, (_, i) => [`${i + 1}`, words]),
  };
}

export function textsOf(sheet: Pick<Sheet, "marks">): TextMark[] {
  return sheet.marks.filter((mark) => mark.kind === "text");
}

/** The words of a sheet, a line of text a line. */
export function wordsOf(sheet: Pick<Sheet, "marks">): string[] {
  return textsOf(sheet).map(({ text }) => text);
}

/** The room that a mark takes; a text's height is that of its letters. */
export function boxOf(mark: Mark): { left: number; top: number; right: number; bottom: number } {
  switch (mark.kind) {
    case "text": {
      const { x, y, width, size } = mark;
      return { left: x, right: x + width, top: y - 0.75 * size, bottom: y + 0.22 * size };
    }
    case "box": {
      const { left, top, width, height } = mark;
      return { left, top, right: left + width, bottom: top + height };
    }
    case "rule": {
      const xs = mark.points.filter((_, i) => i % 2 === 0);
      const ys = mark.points.filter((_, i) => i % 2 === 1);
      return {
        left: Math.min(...xs),
        right: Math.max(...xs),
        top: Math.min(...ys),
        bottom: Math.max(...ys),
      };
    }
    case "picture": {
      const { scene, left, top, scale } = mark;
      const { view } = scene;
      const right = left + (view.right - view.left) * scale;
      return { left, top, right, bottom: top + (view.bottom - view.top) * scale };
    }
  }
}

/** What is wrong with how a sheet is laid: marks beyond its margins, texts over each other. */
export function faultsOf(sheet: Sheet, margin = 36): string[] {
  const faults: string[] = [];
  for (const mark of sheet.marks) {
    const { left, top, right, bottom } = boxOf(mark);
    // A hundredth of a point is less than any printer's dot.
    const out =
      left < margin - 0.01 ||
      top < margin - 0.01 ||
      right > sheet.width - margin + 0.01 ||
      bottom > sheet.height - margin + 2;
    if (out) faults.push(`beyond the margin: ${JSON.stringify({ ...mark, scene: undefined })}`);
  }
  const texts = textsOf(sheet);
  for (const [i, one] of texts.entries()) {
    const a = boxOf(one);
    for (const other of texts.slice(i + 1)) {
      const b = boxOf(other);
      const over =
        a.left < b.right && b.left < a.right && a.top < b.bottom - 0.01 && b.top < a.bottom - 0.01;
      if (over) faults.push(`${one.text} lies over ${other.text}`);
    }
  }
  return faults;
}

/** An example's sheet in all its parts, but for what is given. */
export function sheetWork(
  given: Partial<SheetWork> = {},
  example = "three-walls.tileplan",
): SheetWork {
  const { solved, diagnostics } = exampleOutcome(example);
  const taken = takeoff(solved);
  return {
    facts: { solved, diagnostics, takeoff: taken, revision: null, shownPath: (file) => file },
    paper: paperOf(solved, diagnostics, taken, { revision: null }),
    size: "letter",
    lists: ["cuts", "purchases"],
    fonts: FONTS,
    startRasteriser: () => Promise.resolve((svg) => new TextEncoder().encode(svg.slice(0, 4))),
    progress: () => undefined,
    ...given,
  };
}
