import assert from "node:assert/strict";
import type { Pole } from "../../../src/sheets/index.js";
import { layPole } from "../../../src/sheets/print/lay-pole.js";
import { boxOf, faultsOf, newFlow, textsOf, wordsOf } from "./kit.js";

const INCH = 25_400_000;

function poleOf(inches: number, direction: Pole["direction"] = "up"): Pole {
  const marks = Array.from({ length: Math.floor(inches / 3) }, (_, i) => ({
    at: 3 * i * INCH,
    what: `course ${i + 1} bottom`,
    reading: `${3 * i} in (${76.2 * i} mm)`,
    weight: i === 0 ? ("datum" as const) : ("course" as const),
  }));
  const ends = { from: 0, to: inches * INCH };
  return { kind: "pole", caption: "Heights", direction, ...ends, marks };
}

describe("a story pole", () => {
  const sheets = (() => {
    const flow = newFlow();
    layPole(flow, poleOf(96));
    return flow.finish();
  })();

  it("fills sheets with three strips each, all within the margins", () => {
    assert.ok(sheets.length >= 4 && sheets.length <= 6, `${sheets.length} sheets`);
    for (const sheet of sheets) assert.deepEqual(faultsOf(sheet), []);
  });

  it("has a check of its scale on every sheet: bars of 4 in and 50 mm that are so long", () => {
    for (const sheet of sheets) {
      for (const [told, points] of [
        ["This bar is 4 in long.", 288],
        ["This bar is 50 mm long.", (50 * 72) / 25.4],
      ] as const) {
        const words = textsOf(sheet).find(({ text }) => text === told)!;
        const middle = words.x + words.width / 2;
        const bar = sheet.marks.find((mark) => {
          if (mark.kind !== "rule" || mark.points.length !== 4) return false;
          const { left, right, top, bottom } = boxOf(mark);
          const level = top === bottom && Math.abs(left + right - 2 * middle) < 0.01;
          return level && words.y - top < 20 && words.y > top;
        });
        assert.ok(bar, told);
        const { left, right } = boxOf(bar);
        assert.ok(Math.abs(right - left - points) < 1e-6, `${told}: ${right - left}`);
      }
    }
  });

  it("says how it is printed and put together", () => {
    const words = wordsOf(sheets[0]!).join(" ");
    assert.match(words, /Print at 100 %/);
    assert.match(words, /The foot of strip 1 is the pole's lower end\./);
  });

  it("names each mark, in strips that are numbered", () => {
    const words = sheets.flatMap(wordsOf).join(" ");
    for (let i = 1; i <= 32; i++) assert.ok(words.includes(`course ${i} bottom`), `course ${i}`);
    assert.match(words, /strip 1 of 1\d/);
  });

  it("is turned for places along a wall", () => {
    const flow = newFlow();
    layPole(flow, poleOf(20, "across"));
    assert.match(
      wordsOf(flow.finish()[0]!).join(" "),
      /left end: turn it a quarter turn clockwise/,
    );
  });

  it("says so where it is too long to print", () => {
    const flow = newFlow();
    layPole(flow, poleOf(30_000));
    const pages = flow.finish();
    assert.equal(pages.length, 1);
    assert.match(wordsOf(pages[0]!).join(" "), /too long to print in true size/);
  });
});
