import assert from "node:assert/strict";
import fc from "fast-check";
import {
  boxesOverlap,
  boxRound,
  boxWithin,
  lineHeight,
  makeLabel,
  movedLabel,
  spreadOut,
} from "../../src/drawing/labels.js";
import { textWidth } from "../../src/drawing/text-metrics.js";

describe("labels", () => {
  it("take their room from the anchor on", () => {
    const wish = { text: "6 1/2", role: "dimension", x: 100, y: 50, size: 10 } as const;
    const width = textWidth("6 1/2", 10);
    const start = makeLabel({ ...wish, anchor: "start" }).box;
    const end = makeLabel({ ...wish, anchor: "end" }).box;
    assert.equal(start.left, 100);
    assert.equal(end.right, 100);
    assert.ok(Math.abs(start.right - start.left - width) < 0.002);
    assert.ok(start.top < 50 && start.bottom > 50);
  });

  it("turned upward, are as high as their text is wide", () => {
    const wish = { text: "ceiling", role: "caption", x: 0, y: 0, size: 10 } as const;
    const { box } = makeLabel({ ...wish, upward: true });
    assert.ok(Math.abs(box.bottom - box.top - textWidth("ceiling", 10)) < 0.002);
    assert.ok(box.right - box.left < 13);
  });

  it("in lines of their own height don't touch", () => {
    const line = (i: number) =>
      makeLabel({ text: "Äg", role: "note", x: 0, y: i * lineHeight(10), size: 10 });
    assert.ok(!boxesOverlap(line(0).box, line(1).box));
  });

  it("keep their room when moved", () => {
    const label = makeLabel({ text: "a", role: "note", x: 0, y: 0, size: 10 });
    const moved = movedLabel(label, 5, 7);
    assert.equal(moved.x, 5);
    assert.equal(Math.round((moved.box.top - label.box.top) * 1000), 7000);
  });
});

describe("boxes", () => {
  const box = { left: 0, top: 0, right: 10, bottom: 10 };

  it("that share an edge alone don't overlap", () => {
    assert.ok(!boxesOverlap(box, { ...box, left: 10, right: 20 }));
    assert.ok(boxesOverlap(box, { ...box, left: 9.999, right: 20 }));
  });

  it("are within themselves, and not within what is smaller", () => {
    assert.ok(boxWithin(box, box));
    assert.ok(!boxWithin(box, { ...box, right: 9.999 }));
  });

  it("have a box round them, and none has none", () => {
    assert.deepEqual(boxRound([box, { left: 20, top: -5, right: 21, bottom: 1 }]), {
      left: 0,
      top: -5,
      right: 21,
      bottom: 10,
    });
    assert.equal(boxRound([]), null);
  });
});

describe("spreading out along a line", () => {
  const things = fc.array(
    fc.record({ wish: fc.integer({ min: -500, max: 500 }), size: fc.integer({ min: 1, max: 90 }) }),
    { maxLength: 14 },
  );

  it("leaves things that have room where they wish to be", () => {
    const apart = [
      { wish: 0, size: 10 },
      { wish: 10, size: 10 },
      { wish: 40, size: 2 },
    ];
    assert.deepEqual(spreadOut(apart), [0, 10, 40]);
  });

  it("shares the shift between two that want one place", () => {
    assert.deepEqual(
      spreadOut([
        { wish: 0, size: 10 },
        { wish: 0, size: 10 },
      ]),
      [-5, 5],
    );
  });

  it("lays none over another, in the order of their wishes", () => {
    fc.assert(
      fc.property(things, (wishes) => {
        const places = spreadOut(wishes);
        const laid = wishes
          .map(({ wish, size }, i) => ({ wish, size, place: places[i]!, i }))
          .sort((a, b) => a.wish - b.wish || a.i - b.i);
        for (let i = 1; i < laid.length; i++) {
          const [before, after] = [laid[i - 1]!, laid[i]!];
          const gap = after.place - after.size / 2 - (before.place + before.size / 2);
          assert.ok(gap > -1e-9, `gap ${gap}`);
        }
      }),
    );
  });
});
