import assert from "node:assert/strict";
import { marked, type Token, type Tokens } from "marked";
import { paperMarkdown } from "../../../src/sheets/paper/markdown.js";
import type { Block, Paper } from "../../../src/sheets/paper/paper.js";
import { paperOf } from "../../../src/sheets/paper/paper-of.js";
import { exampleNames } from "../../support/examples.js";
import { exampleGround } from "./sheet-bench.js";

/** What no text of a person may do to a sheet: begin a list, a heading, a table, HTML, a link. */
const TRICKS = [
  "# not a heading",
  "- not a list",
  "1. not a list",
  "*not* _bold_ `code`",
  "a | b",
  "<script>alert(1)</script>",
  "[not](a-link)",
  "![not](a-picture)",
  "3 x 6 & more; &amp; stays",
  "a\\|b",
  "> no quote",
  "---",
  "=1+1",
];

function markdown(blocks: readonly Block[], title = "A page"): string {
  const pages = [{ id: "p", title, wall: null, blocks }];
  const paper: Paper = { title: "A paper", revision: null, pages };
  return [...paperMarkdown(paper, () => null)].join("");
}

/** The tokens after the paper's and the page's headings, as another library reads them. */
function read(text: string): Token[] {
  const tokens = marked.lexer(text).filter(({ type }) => type !== "space");
  return tokens.slice(2);
}

/** The text that a reader sees. */
function seen(token: Token | Tokens.TableCell): string {
  const { tokens, text } = token as { tokens?: Token[]; text?: string };
  if (tokens) return tokens.map(seen).join("");
  return (text ?? "").replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&amp;/g, "&");
}

describe("a paper as Markdown", () => {
  it("is headings, texts, lists and cautions", () => {
    const tokens = read(
      markdown([
        { kind: "heading", text: "Cuts" },
        { kind: "text", text: "Write it on the back." },
        { kind: "list", numbered: true, items: ["one", "two"] },
        { kind: "list", numbered: false, items: ["a"] },
        { kind: "caution", lines: ["Cut wet.", "Use a GFCI."] },
      ]),
    );
    assert.deepEqual(
      tokens.map(({ type }) => type),
      ["heading", "paragraph", "list", "list", "blockquote"],
    );
    const [first, , numbered, plain, caution] = tokens;
    assert.equal((first as Tokens.Heading).depth, 3);
    assert.equal((numbered as Tokens.List).ordered, true);
    assert.deepEqual(
      (numbered as Tokens.List).items.map((item) => item.text),
      ["one", "two"],
    );
    assert.equal((plain as Tokens.List).ordered, false);
    assert.match(seen(caution!), /Cut wet\..*Use a GFCI\./s);
  });

  it("is tables with their columns' sides", () => {
    const [, table] = read(
      markdown([
        {
          kind: "table",
          caption: "Heights",
          columns: [
            { title: "Course", align: "left" },
            { title: "Height", align: "right" },
          ],
          rows: [["1", "4 in"]],
        },
      ]),
    );
    const { header, rows, align } = table as Tokens.Table;
    assert.deepEqual(align, ["left", "right"]);
    assert.deepEqual(header.map(seen), ["Course", "Height"]);
    assert.deepEqual(
      rows.map((row) => row.map(seen)),
      [["1", "4 in"]],
    );
  });

  it("keeps every text as it stands, in a paragraph, a title and a cell", () => {
    for (const trick of TRICKS) {
      const [paragraph] = read(markdown([{ kind: "text", text: trick }]));
      assert.equal(paragraph!.type, "paragraph", trick);
      assert.equal(seen(paragraph!), trick);
      const heading = marked.lexer(markdown([], trick)).filter(({ type }) => type !== "space")[1];
      assert.equal(seen(heading!), trick);
      const columns = [{ title: trick, align: "left" }] as const;
      const [, table] = read(markdown([{ kind: "table", caption: "c", columns, rows: [[trick]] }]));
      const { header, rows } = table as Tokens.Table;
      assert.deepEqual([header.map(seen), rows.map((row) => row.map(seen))], [[trick], [[trick]]]);
    }
  });

  it("tells a story pole as a table of its marks, the highest first", () => {
    const marks = [
      { at: 0, what: "level line", reading: "0 in (0 mm)", weight: "datum" },
      { at: 5, what: "course 1 bottom", reading: "1/8 in (3.2 mm)", weight: "course" },
    ] as const;
    const pole = { kind: "pole", caption: "Heights", from: 0, to: 5, marks } as const;
    const rows = (direction: "up" | "across") => {
      const [, table] = read(markdown([{ ...pole, direction }]));
      return (table as Tokens.Table).rows.map((row) => row.map(seen));
    };
    const [level, bottom] = [
      ["0 in (0 mm)", "level line"],
      ["1/8 in (3.2 mm)", "course 1 bottom"],
    ];
    assert.deepEqual(rows("up"), [bottom, level]);
    assert.deepEqual(rows("across"), [level, bottom]);
  });

  it("points to a page's picture where there is one, and names it where there is none", () => {
    const { solved, diagnostics, takeoff } = exampleGround("niche-wall.tileplan");
    const paper = paperOf(solved, diagnostics, takeoff, { revision: "3ac1" });
    const text = [...paperMarkdown(paper, ({ id }) => `pictures/${id}.svg`)].join("");
    assert.ok(text.includes("![North wall, seen from the room](pictures/wall-north.svg)"));
    assert.ok(text.includes("\nRevision 3ac1\n"));
    const without = [...paperMarkdown(paper, () => null)].join("");
    assert.ok(without.includes("Picture: North wall, seen from the room"));
  });

  it("is read with every table of every example whole", () => {
    for (const name of exampleNames()) {
      const { solved, diagnostics, takeoff } = exampleGround(name);
      const paper = paperOf(solved, diagnostics, takeoff, { revision: null });
      const tokens = marked.lexer([...paperMarkdown(paper, () => null)].join(""));
      const tables = tokens.filter(({ type }) => type === "table") as Tokens.Table[];
      const wanted = paper.pages.flatMap(({ blocks }) =>
        blocks.flatMap((block) =>
          block.kind === "table"
            ? [block.rows.length]
            : block.kind === "pole"
              ? [block.marks.length]
              : [],
        ),
      );
      assert.deepEqual(
        tables.map(({ rows }) => rows.length),
        wanted,
        name,
      );
    }
  });
});
