import assert from "node:assert/strict";
import type { PoleMark } from "../../../src/sheets/index.js";
import type { Strip } from "../../../src/sheets/print/cut-strips.js";
import { layStrip } from "../../../src/sheets/print/lay-strip.js";
import { boxOf, faultsOf, newFlow, textsOf } from "./kit.js";

const mark = (what: string, weight: PoleMark["weight"] = "course"): PoleMark => ({
  at: 0,
  what,
  reading: "3 in",
  weight,
});

const PLACE = { left: 100, bottom: 700, width: 170 };

function laid(strip: Partial<Strip>) {
  const flow = newFlow();
  flow.take(1);
  layStrip(flow, { number: 1, of: 1, length: 500, marks: [], ...strip }, PLACE);
  return flow.finish()[0]!;
}

describe("a strip of a story pole", () => {
  it("has each mark at its true height from the foot, on the pole's edge", () => {
    const sheet = laid({ marks: [{ up: 72, mark: mark("course 2 bottom") }] });
    const tick = sheet.marks.find(
      (each) => each.kind === "rule" && each.points[1] === 700 - 72 && each.points[3] === 700 - 72,
    );
    assert.ok(tick);
    assert.equal(boxOf(tick).left, 100);
  });

  it("draws the datum heavier and longer than a course, and an opening between", () => {
    const weights = (["course", "opening", "datum"] as const).map((weight) => {
      const sheet = laid({ marks: [{ up: 72, mark: mark("m", weight) }] });
      const tick = sheet.marks.find((each) => each.kind === "rule" && each.points[1] === 628)!;
      return [tick.kind === "rule" ? tick.weight : 0, boxOf(tick).right];
    });
    const [course, opening, datum] = weights;
    assert.ok(course![0]! < opening![0]! && opening![0]! < datum![0]!);
    assert.ok(course![1]! < opening![1]! && opening![1]! < datum![1]!);
  });

  it("keeps the words of close marks apart, and off its own number", () => {
    const marks = [0, 1, 4.5, 6, 8, 490, 499].map((up, i) => ({ up, mark: mark(`mark ${i}`) }));
    for (const number of [1, 2, 3]) {
      assert.deepEqual(faultsOf(laid({ marks, number, of: 3 })), []);
    }
  });

  it("shrinks its words where marks are many", () => {
    const marks = Array.from({ length: 80 }, (_, i) => ({ up: 6 * i, mark: mark(`m${i}`) }));
    const sheet = laid({ marks });
    assert.deepEqual(faultsOf(sheet), []);
    assert.equal(textsOf(sheet).filter(({ text }) => text.startsWith("3 in")).length, 80);
  });

  it("has crosses in the middle of both overlaps", () => {
    const crossesOf = (number: number): number =>
      laid({ number, of: 3 }).marks.filter((each) => each.kind === "rule" && each.weight === 0.6)
        .length / 2;
    assert.deepEqual([1, 2, 3].map(crossesOf), [1, 2, 1]);
  });
});
