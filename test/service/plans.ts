import type { Position } from "../../src/model/index.js";
import {
  createService,
  type PlanDocument,
  type PlanService,
  type TextEdit,
  type Turns,
  type Workspace,
} from "../../src/service/index.js";
import { exampleText } from "../support/examples.js";

export const FILE = "/plans/bath.tileplan";
export const STOCK_FILE = "/plans/stock.tileplan";

/** Files in memory; the stock list of the examples is among them unless it is named otherwise. */
export class Plans implements Workspace {
  readonly texts = new Map<string, string>([[STOCK_FILE, exampleText("stock.tileplan")]]);
  readonly service: PlanService = createService(this);
  #version = 0;

  constructor(texts: Readonly<Record<string, string>> = {}) {
    for (const [file, text] of Object.entries(texts)) this.texts.set(file, text);
  }

  readonly read = (file: string): string | null => this.texts.get(file) ?? null;
  readonly rootOf = (): string => "/plans";
  readonly files = (): Iterable<string> => this.texts.keys();
  readonly uriOf = (file: string): string => `file://${file}`;

  /** A new version of a file. */
  open(text: string, file = FILE): PlanDocument {
    this.texts.set(file, text);
    return { file, uri: this.uriOf(file), version: ++this.#version, text };
  }
}

/** A text with its cursor, which is written as `|`. */
export function withCursor(marked: string): { text: string; at: Position } {
  const offset = marked.indexOf("|");
  const before = marked.slice(0, offset);
  const line = before.split("\n").length - 1;
  const at = { line, character: offset - (before.lastIndexOf("\n") + 1) };
  return { text: before + marked.slice(offset + 1), at };
}

/** The text with edits made, in any order; they don't overlap. */
export function edited(text: string, edits: readonly TextEdit[]): string {
  const starts = [0];
  for (const { index } of text.matchAll(/\n/g)) starts.push(index + 1);
  const offset = ({ line, character }: Position): number =>
    line < starts.length ? starts[line]! + character : text.length;
  return [...edits]
    .sort((a, b) => offset(b.range.start) - offset(a.range.start))
    .reduce((changed, { range, text: wanted }) => {
      return changed.slice(0, offset(range.start)) + wanted + changed.slice(offset(range.end));
    }, text);
}

/** Never called off. */
export const TURNS: Turns = { cancelled: false, pause: () => Promise.resolve() };

/** A wall of 3 x 6 tile; `lay` stands in the lay's block and `wall` in the wall's. */
export function wallPlan(lay: string, wall = "  size 60 x 47 3/16\n"): string {
  return `use "stock.tileplan"
wall back "Back wall" {
${wall}  bottom pan movement 1/8
  left wall movement 1/8
  right wall movement 1/8
  top ceiling movement 1/8
  lay pressed {
    bond stack
${lay}  }
}
`;
}
