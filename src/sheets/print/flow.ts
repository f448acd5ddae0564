import type { Faces } from "./faces.js";
import { MARGIN, PAPER_SIZES, type PaperSize } from "./paper-size.js";
import type { Mark, Sheet, Weight } from "./sheet.js";
import { wrapLines } from "./wrap-lines.js";

/** What stands at the head of each sheet of a page. */
export interface Head {
  readonly page: string;
  readonly title: string;
  readonly plan: string;
  readonly revision: string | null;
}

/** Sizes of letters, in points. Work is read at arm's length: nothing that is worked from is under 9. */
export const SIZE = { title: 17, heading: 12.5, text: 10, table: 9.5, small: 8 } as const;

/** From one baseline to the next, in sizes of the letter. */
export const LEADING = 1.32;

/** From the top of a line to its baseline, in sizes of the letter. */
const ASCENT = 1.02;

/** Room for the sheet's number at its foot. */
const FOOT = 18;
/** Under the head, before the first block. */
const AFTER_HEAD = 10;

/**
 * A page as it runs over sheets of paper. It knows how far down the sheet it is, and begins the next
 * one, under the same title, where something does not fit.
 */
export class Flow {
  readonly sheets: Sheet[] = [];
  readonly left = MARGIN;
  readonly missing = new Set<string>();
  #marks: Mark[] = [];
  /** How many of the marks are the sheet's head. */
  #ofHead = 0;
  #y = 0;
  #top = 0;
  #upright = true;

  constructor(
    private readonly head: Head,
    private readonly paper: PaperSize,
    readonly faces: Faces,
  ) {
    this.begin();
  }

  /** The room between the margins. */
  get width(): number {
    return this.#size.width - 2 * MARGIN;
  }

  /** What is left of this sheet. */
  get room(): number {
    return this.#bottom - this.#y;
  }

  /** What a sheet has under its head. */
  get fullRoom(): number {
    return this.#bottom - this.#top;
  }

  get y(): number {
    return this.#y;
  }

  /** Whether nothing stands on this sheet yet but its head. */
  get empty(): boolean {
    return this.#y === this.#top;
  }

  get upright(): boolean {
    return this.#upright;
  }

  /** A new sheet; on its side where asked. */
  begin(upright = true): void {
    this.#end();
    this.#upright = upright;
    this.#layHead();
    this.#top = this.#y;
  }

  /** A new sheet when there is less room than this, unless this one is still empty. */
  need(height: number): void {
    if (height > this.room && !this.empty) this.begin();
  }

  /** Goes down, and gives where it was. */
  take(height: number): number {
    const top = this.#y;
    this.#y += height;
    return top;
  }

  /** White before the next block; none at the head of a sheet. */
  space(height: number): void {
    if (!this.empty) this.#y += height;
  }

  put(...marks: Mark[]): void {
    this.#marks.push(...marks);
  }

  /** One line of text whose top is at `top`; the width that it has. */
  line(text: string, x: number, top: number, size: number, weight: Weight = "regular"): number {
    const printable = this.printable(text);
    const width = this.faces.widthOf(printable, size, weight);
    if (printable.trim() !== "") {
      const y = top + ASCENT * size;
      this.put({ kind: "text", text: printable, x, y, width, size, weight });
    }
    return width;
  }

  wrap(text: string, width: number, size: number, weight: Weight = "regular"): string[] {
    return wrapLines(this.printable(text, true), width, (part) =>
      this.faces.widthOf(part, size, weight),
    );
  }

  /** A text as the font can print it; what it can't is kept to be told. */
  printable(text: string, keepLines = false): string {
    for (const letter of this.faces.missingIn(text)) this.missing.add(letter);
    if (!keepLines) return this.faces.printable(text);
    return text
      .split("\n")
      .map((line) => this.faces.printable(line))
      .join("\n");
  }

  /** The sheets, when nothing more comes: without a last one that nothing came to. */
  finish(): readonly Sheet[] {
    this.#end();
    return this.sheets;
  }

  get #size(): { readonly width: number; readonly height: number } {
    const { width, height } = PAPER_SIZES[this.paper];
    return this.#upright ? { width, height } : { width: height, height: width };
  }

  get #bottom(): number {
    return this.#size.height - MARGIN - FOOT;
  }

  #layHead(): void {
    const { plan, revision, title } = this.head;
    this.#y = MARGIN;
    const { small } = SIZE;
    const told = revision === null ? "" : `Revision ${revision}`;
    const toldWidth = this.faces.widthOf(this.printable(told), small);
    const planLines = this.wrap(plan, this.width - toldWidth - 12, small);
    this.line(told, MARGIN + this.width - toldWidth, this.#y, small);
    for (const line of planLines) this.line(line, MARGIN, this.take(small * LEADING), small);
    const whole = this.sheets.length === 0 ? title : `${title} (continued)`;
    for (const line of this.wrap(whole, this.width, SIZE.title, "bold")) {
      this.line(line, MARGIN, this.take(SIZE.title * LEADING), SIZE.title, "bold");
    }
    const y = this.#y + 2;
    const points = [MARGIN, y, MARGIN + this.width, y];
    this.put({ kind: "rule", points, weight: 1.2, dash: [] });
    this.#y = y + AFTER_HEAD;
    this.#ofHead = this.#marks.length;
  }

  #end(): void {
    const { page, title } = this.head;
    // A sheet that nothing came to is not printed, but the first is: it says that there is nothing.
    const bare = this.#marks.length === this.#ofHead && this.sheets.length > 0;
    if (bare || this.#marks.length === 0) {
      this.#marks = [];
      return;
    }
    const part = this.sheets.length + 1;
    this.sheets.push({ page, part, title, ...this.#size, marks: this.#marks });
    this.#marks = [];
  }
}
