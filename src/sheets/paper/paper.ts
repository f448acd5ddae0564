import type { Nm } from "../../measure/index.js";
import type { Scene } from "../../drawing/index.js";

/**
 * What leaves the screen, before any format: a run of pages made of blocks. Every format (PDF, Markdown,
 * pictures) prints these and decides nothing but how they look.
 */
export interface Paper {
  readonly title: string;
  /** Such as a commit or a date that the host knows; null when it doesn't. */
  readonly revision: string | null;
  readonly pages: readonly Page[];
}

/** One subject: a wall, the shopping list, the whole plan. It may run over several sheets of paper. */
export interface Page {
  /** Stable and made of letters, digits and hyphens: a file's name and an anchor. */
  readonly id: string;
  readonly title: string;
  /** The wall it is about, or null. */
  readonly wall: string | null;
  readonly blocks: readonly Block[];
}

export type Block =
  | { readonly kind: "heading"; readonly text: string }
  | { readonly kind: "text"; readonly text: string }
  /** To be seen before work begins: set off by more than colour. */
  | { readonly kind: "caution"; readonly lines: readonly string[] }
  | { readonly kind: "list"; readonly numbered: boolean; readonly items: readonly string[] }
  | Table
  | { readonly kind: "picture"; readonly scene: Scene; readonly caption: string }
  | Pole;

export interface Table {
  readonly kind: "table";
  readonly caption: string;
  readonly columns: readonly Column[];
  /** As many cells as columns in each. */
  readonly rows: readonly (readonly string[])[];
}

export interface Column {
  readonly title: string;
  /** Figures stand to the right. */
  readonly align: "left" | "right";
}

/** A story pole: a strip in true size, over as many pages as it takes. */
export interface Pole {
  readonly kind: "pole";
  readonly caption: string;
  readonly direction: "up" | "across";
  /** Where the strip begins and ends, from the datum. */
  readonly from: Nm;
  readonly to: Nm;
  readonly marks: readonly PoleMark[];
}

export interface PoleMark {
  /** Exact, from the datum. */
  readonly at: Nm;
  /** The mark's own words, such as `course 12 bottom`. */
  readonly what: string;
  /** The height as it is read off, rounded from the exact sum. */
  readonly reading: string;
  /** Which of several marks to draw boldly. */
  readonly weight: "course" | "datum" | "opening";
}
