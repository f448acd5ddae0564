import assert from "node:assert/strict";
import { run } from "../../../src/engine.js";
import { type Ground, groundOf } from "../../../src/sheets/paper/ground.js";
import type { Block, Page, Table } from "../../../src/sheets/paper/paper.js";
import type { SolvedWall } from "../../../src/solver/index.js";
import { takeoff } from "../../../src/takeoff/index.js";
import { exampleSource, exampleText } from "../../support/examples.js";
import { ALONE } from "../../support/solve-text.js";
import type { Source } from "../../../src/language/index.js";
import { planOf } from "../setting-out/plans.js";

/** What the pages of a plan are made from. */
export function groundFor(text: string, source: Source = ALONE, revision = "r1"): Ground {
  const { solved, diagnostics } = run(text, source);
  return groundOf(solved, diagnostics, takeoff(solved), revision);
}

/** The same for walls on the setting-out bench: a 4 x 4 tile with joints of 1/8. */
export function benchGround(...walls: string[]): Ground {
  return groundFor(planOf(...walls));
}

export function exampleGround(name: string): Ground {
  return groundFor(exampleText(name), exampleSource(name));
}

export function wallOf({ solved }: Ground, name = "back"): SolvedWall {
  const wall = solved.walls.find((each) => each.wall.name === name);
  assert.ok(wall, name);
  return wall;
}

/** The only table among blocks, or the one with that caption. */
export function tableOf(blocks: readonly Block[], caption = ""): Table {
  const found = blocks.flatMap((block) => (block.kind === "table" ? [block] : []));
  const table = found.find((each) => each.caption.startsWith(caption));
  assert.ok(table, `a table ${caption}`);
  for (const row of table.rows) assert.equal(row.length, table.columns.length, row.join(" | "));
  return table;
}

/** All that blocks say, a line each. */
export function wordsOf(blocks: readonly Block[]): string {
  return blocks
    .flatMap((block): readonly string[] => {
      switch (block.kind) {
        case "heading":
        case "text":
          return [block.text];
        case "caution":
          return block.lines;
        case "list":
          return block.items;
        case "table":
          return [block.caption, ...block.rows.map((row) => row.join(" | "))];
        case "picture":
        case "pole":
          return [block.caption];
      }
    })
    .join("\n");
}

export function pageOf(pages: readonly Page[], id: string): Page {
  const page = pages.find((each) => each.id === id);
  assert.ok(page, id);
  return page;
}
