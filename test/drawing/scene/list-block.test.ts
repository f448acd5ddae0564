import assert from "node:assert/strict";
import { boxesOverlap } from "../../../src/drawing/labels.js";
import { listBlock, type Block } from "../../../src/drawing/scene/list-block.js";

function blockOf(items: readonly string[], columns: number): Block {
  return listBlock("Heading", items, { em: 10, width: 200, columns }, (words) => ({
    words,
    indent: 20,
    role: "note",
    swatches: [],
    badges: [],
  }));
}

const ITEMS = Array.from(
  { length: 9 },
  (_, i) => `item ${i} with words enough for two lines of it`,
);

describe("a block of items", () => {
  it("has its heading first, then each item wrapped to the width", () => {
    const { labels } = blockOf(ITEMS, 1);
    assert.equal(labels[0]!.text, "Heading");
    assert.ok(labels.length > 2 * ITEMS.length - 1);
    assert.ok(labels.every(({ box }) => box.right <= 200));
  });

  for (const columns of [1, 2, 3, 5]) {
    it(`lays no line over another in ${columns} columns, within its width and height`, () => {
      const { labels, width, height } = blockOf(ITEMS, columns);
      for (const [i, one] of labels.entries()) {
        assert.ok(one.box.right <= width && one.box.bottom <= height);
        for (const other of labels.slice(i + 1)) assert.ok(!boxesOverlap(one.box, other.box));
      }
    });
  }

  it("is lower in more columns", () => {
    assert.ok(blockOf(ITEMS, 3).height < 0.6 * blockOf(ITEMS, 1).height);
  });

  it("takes no more columns than it has items", () => {
    assert.equal(blockOf(["one"], 4).width, 200);
  });
});
