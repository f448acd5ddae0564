import assert from "node:assert/strict";
import type { OutlineItem } from "../../src/service/index.js";
import { exampleText } from "../support/examples.js";
import { Plans } from "./plans.js";

function shown(items: readonly OutlineItem[], depth = 0): string[] {
  return items.flatMap(({ kind, name, detail, inside }) => [
    `${"  ".repeat(depth)}${kind}: ${name}${detail ? ` (${detail})` : ""}`,
    ...shown(inside, depth + 1),
  ]);
}

describe("the outline", () => {
  it("lists what a plan declares, walls with their edges, openings, holes and lay", () => {
    const plans = new Plans();
    const items = plans.service.outline(plans.open(exampleText("niche-wall.tileplan")));
    assert.deepEqual(shown(items), [
      "plan: Canal Row, ensuite",
      "tile: slab (300 x 600 wall tile, chalk)",
      "wall: north (North wall)",
      "  edge: bottom (floor)",
      "  edge: left (wall)",
      "  edge: right (wall)",
      "  edge: top (ceiling)",
      "  opening: shelf (niche)",
      "  hole: spout (across 60)",
      "  lay: lay slab",
    ]);
  });

  it("lists saw, mortar, grout and sealant by what they are", () => {
    const plans = new Plans();
    const text = 'saw {\n  kerf 1/8\n}\nmortar "white" {\n}\ngrout "grey" {\n}\nsealant {\n}\n';
    assert.deepEqual(shown(plans.service.outline(plans.open(text))), [
      "supply: saw",
      "supply: mortar (white)",
      "supply: grout (grey)",
      "supply: sealant",
    ]);
  });

  it("has each head inside its range, also in a broken text", () => {
    const plans = new Plans();
    const text = 'let a = \nuse "x.tileplan"\nwall {\n  left corner b under\n  lay {\nrules {\n';
    const check = (items: readonly OutlineItem[]): void => {
      for (const { range, head, inside } of items) {
        assert.ok(range.start.line <= head.start.line && head.end.line <= range.end.line);
        check(inside);
      }
    };
    const items = plans.service.outline(plans.open(text));
    assert.ok(items.length >= 2);
    check(items);
  });
});
