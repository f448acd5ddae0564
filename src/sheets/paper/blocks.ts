import type { Block, Table } from "./paper.js";

/** What a cell says where there is nothing to say. */
export const NONE = "–";

/** A table; `columns` are titles, those of figures with `>` before them. */
export function table(
  caption: string,
  columns: readonly string[],
  rows: readonly (readonly string[])[],
): Table {
  return {
    kind: "table",
    caption,
    columns: columns.map((title) =>
      title.startsWith(">") ? { title: title.slice(1), align: "right" } : { title, align: "left" },
    ),
    rows,
  };
}

export function heading(text: string): Block {
  return { kind: "heading", text };
}

export function text(words: string): Block {
  return { kind: "text", text: words };
}

export function list(items: readonly string[], numbered = false): Block {
  return { kind: "list", numbered, items };
}

/** A heading with its blocks, or nothing where there is none. */
export function section(title: string, blocks: readonly Block[]): Block[] {
  return blocks.length === 0 ? [] : [heading(title), ...blocks];
}

/** A table, or nothing where it has no row. */
export function tableOfSome(
  caption: string,
  columns: readonly string[],
  rows: readonly (readonly string[])[],
): Block[] {
  return rows.length === 0 ? [] : [table(caption, columns, rows)];
}
