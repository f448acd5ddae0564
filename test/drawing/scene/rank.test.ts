import assert from "node:assert/strict";
import { boxesOverlap } from "../../../src/drawing/labels.js";
import { intoRanks, layColumn, layRow } from "../../../src/drawing/scene/rank.js";

const place = { em: 10, line: 100, wall: 0 };
const row = (stretches: { from: number; to: number; text: string | null }[]) =>
  layRow({ part: "p", caption: "course 1", stretches }, place);

describe("a row of dimensions", () => {
  it("has a line, ticks and a figure over the middle of each stretch", () => {
    const { rank, labels } = row([{ from: 0, to: 200, text: "8" }]);
    assert.deepEqual(rank.lines, [0, 100, 200, 100]);
    assert.deepEqual(rank.ticks, [0, 100, 200, 100]);
    assert.equal(labels[0]!.x, 100);
    assert.ok(labels[0]!.box.bottom < 100);
  });

  it("puts the figure of a narrow end outside, over the line drawn on", () => {
    const { rank, labels } = row([
      { from: 0, to: 5, text: "3 1/32" },
      { from: 5, to: 200, text: "8 full widths" },
    ]);
    assert.ok(labels[0]!.box.right <= 0);
    assert.ok(rank.lines.length > 8);
  });

  it("lays no figure over another, however narrow the stretches", () => {
    const stretches = Array.from({ length: 12 }, (_, i) => ({
      from: 7 * i,
      to: 7 * (i + 1),
      text: `${i} 31/32`,
    }));
    const { labels, leaders } = row(stretches);
    for (const [i, one] of labels.entries()) {
      for (const other of labels.slice(i + 1)) assert.ok(!boxesOverlap(one.box, other.box));
    }
    assert.ok(leaders.length > 0, "figures that stand apart have leaders");
  });

  it("draws a stretch whose length is not told", () => {
    const { labels } = row([{ from: 0, to: 200, text: null }]);
    assert.deepEqual(
      labels.map(({ text }) => text),
      ["course 1"],
    );
  });
});

describe("a column of dimensions", () => {
  it("has its figures outwards of the line", () => {
    const wish = { part: "p", caption: null, stretches: [{ from: 0, to: -80, text: "3" }] };
    assert.ok(layColumn(wish, place, "left").labels[0]!.box.right < 100);
    assert.ok(layColumn(wish, place, "right").labels[0]!.box.left > 100);
  });

  it("lays no figure over another", () => {
    const stretches = Array.from({ length: 8 }, (_, i) => ({
      from: -3 * i,
      to: -3 * (i + 1),
      text: "1/8",
    }));
    const { labels } = layColumn({ part: "p", caption: null, stretches }, place, "left");
    for (const [i, one] of labels.entries()) {
      for (const other of labels.slice(i + 1)) assert.ok(!boxesOverlap(one.box, other.box));
    }
  });
});

describe("stretches in ranks", () => {
  it("share a rank where they are apart, and are drawn once", () => {
    const a = { from: 0, to: 10, text: "a" };
    const b = { from: 10, to: 20, text: "b" };
    const c = { from: 5, to: 12, text: "c" };
    assert.deepEqual(intoRanks([a, b, c, a]), [[a, b], [c]]);
  });

  it("may run down as well as up", () => {
    const up = { from: 0, to: -10, text: "a" };
    const down = { from: -10, to: 0, text: "b" };
    assert.equal(intoRanks([up, down]).length, 2);
  });
});
