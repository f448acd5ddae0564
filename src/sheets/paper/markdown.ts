import type { BlockContent, PhrasingContent, Root, RootContent, TableRow } from "mdast";
import { gfmTableToMarkdown } from "mdast-util-gfm-table";
import { toMarkdown } from "mdast-util-to-markdown";
import type { Block, Page, Paper, Pole, Table } from "./paper.js";

/** Where a page's picture is kept beside the Markdown, or null where it isn't. */
export type PictureFile = (page: Page, caption: string) => string | null;

/**
 * A paper as Markdown (CommonMark with tables): a heading a page, every text escaped so that it reads
 * as it stands. One part a page. A story pole is told as a table of its marks.
 */
export function* paperMarkdown(paper: Paper, pictureFile: PictureFile): Generator<string> {
  yield printed([
    { type: "heading", depth: 1, children: words(paper.title) },
    ...(paper.revision === null ? [] : [paragraph(`Revision ${paper.revision}`)]),
  ]);
  for (const page of paper.pages) {
    const title: RootContent = { type: "heading", depth: 2, children: words(page.title) };
    const blocks = page.blocks.flatMap((block) => nodesOf(block, page, pictureFile));
    yield `\n${printed([title, ...blocks])}`;
  }
}

function printed(children: RootContent[]): string {
  const root: Root = { type: "root", children };
  return toMarkdown(root, {
    bullet: "-",
    extensions: [gfmTableToMarkdown({ tablePipeAlign: false })],
  });
}

function nodesOf(block: Block, page: Page, pictureFile: PictureFile): BlockContent[] {
  switch (block.kind) {
    case "heading":
      return [{ type: "heading", depth: 3, children: words(block.text) }];
    case "text":
      return [paragraph(block.text)];
    case "caution":
      return [{ type: "blockquote", children: block.lines.map(strong) }];
    case "list":
      return [
        {
          type: "list",
          ordered: block.numbered,
          spread: false,
          children: block.items.map((item) => ({
            type: "listItem",
            spread: false,
            children: [paragraph(item)],
          })),
        },
      ];
    case "table":
      return tableNodes(block);
    case "picture":
      return [pictureNode(block.caption, pictureFile(page, block.caption))];
    case "pole":
      return tableNodes(poleTable(block));
  }
}

function tableNodes({ caption, columns, rows }: Table): BlockContent[] {
  const row = (cells: readonly string[]): TableRow => ({
    type: "tableRow",
    children: cells.map((cell) => ({ type: "tableCell", children: words(cell) })),
  });
  return [
    strong(caption),
    {
      type: "table",
      align: columns.map((column) => column.align),
      children: [row(columns.map((column) => column.title)), ...rows.map(row)],
    },
  ];
}

/** The mark that is farthest from the datum stands first on an upright pole, as on the wall. */
function poleTable({ caption, direction, marks }: Pole): Table {
  const rows = marks.map(({ reading, what }) => [reading, what]);
  return {
    kind: "table",
    caption,
    columns: [
      { title: "Reading", align: "right" },
      { title: "Mark", align: "left" },
    ],
    rows: direction === "up" ? rows.reverse() : rows,
  };
}

function pictureNode(caption: string, file: string | null): BlockContent {
  if (file === null) return paragraph(`Picture: ${caption}`);
  return { type: "paragraph", children: [{ type: "image", url: file, alt: caption }] };
}

function paragraph(text: string): BlockContent & { type: "paragraph" } {
  return { type: "paragraph", children: words(text) };
}

function strong(text: string): BlockContent & { type: "paragraph" } {
  return { type: "paragraph", children: [{ type: "strong", children: words(text) }] };
}

function words(value: string): PhrasingContent[] {
  return [{ type: "text", value }];
}
