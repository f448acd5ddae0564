import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { Resvg } from "@resvg/resvg-js";
import { fitText, textWidth, wrapText } from "../../src/drawing/text-metrics.js";

/** The font that svgdom brings along, so the test measures the same letters on every machine. */
const FONT = fileURLToPath(
  new URL("../../node_modules/svgdom/fonts/OpenSans-Regular.ttf", import.meta.url),
);

/** The width of a text's ink at 100 px, measured by a rasteriser. */
function inkWidth(text: string): number {
  const escaped = text.replace(/&/g, "&amp;").replace(/</g, "&lt;");
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="4000" height="200"><text x="100" y="130" font-size="100" font-family="Open Sans">${escaped}</text></svg>`;
  const font = { loadSystemFonts: false, fontFiles: [FONT], defaultFontFamily: "Open Sans" };
  const box = new Resvg(svg, { font }).innerBBox();
  assert.ok(box, `${text} has ink`);
  return box.width;
}

describe("the width of a text", () => {
  for (const text of [
    "5 7/8+",
    "course 33: 1 15/16",
    "Wet wall, 2410 × 2400",
    "MWMWMW",
    "illicit jellyfish",
    "(2 13/16 seen)",
    "@#%&<>",
  ]) {
    it(`is no less than a rasteriser measures: ${text}`, () => {
      const ink = inkWidth(text);
      const told = textWidth(text, 100);
      assert.ok(told >= ink, `${told} for ${ink}`);
      assert.ok(told < 1.45 * ink, `${told} is not far over ${ink}`);
    });
  }

  it("grows with size and weight", () => {
    assert.equal(textWidth("abc", 20), 2 * textWidth("abc", 10));
    assert.ok(textWidth("abc", 10, "bold") > textWidth("abc", 10));
  });
});

describe("fitting a text", () => {
  it("leaves what fits and ends the rest with an ellipsis", () => {
    assert.equal(fitText("short", 1000, 10), "short");
    const cut = fitText("a rather long title of a wall", 60, 10);
    assert.match(cut, /^a rat.*…$/);
    assert.ok(textWidth(cut, 10) <= 60);
  });

  it("wraps at spaces, in lines that fit", () => {
    const lines = wrapText("one two three four five six", 60, 10);
    assert.ok(lines.length > 1);
    assert.ok(lines.every((line) => textWidth(line, 10) <= 60));
    assert.equal(lines.join(" "), "one two three four five six");
  });

  it("keeps a mixed number and its unit in one line", () => {
    for (let width = 40; width < 200; width += 3) {
      const lines = wrapText("a leg 4 3/4 in wide of 600 mm", width, 10);
      if (lines.some((line) => line.endsWith("…"))) continue;
      assert.ok(
        lines.some((line) => line.includes("4 3/4 in")),
        lines.join("|"),
      );
      assert.ok(
        lines.some((line) => line.includes("600 mm")),
        lines.join("|"),
      );
    }
  });

  it("stops after the most lines", () => {
    const lines = wrapText("word ".repeat(100).trim(), 60, 10, 3);
    assert.equal(lines.length, 3);
    assert.match(lines[2]!, /…$/);
  });
});
