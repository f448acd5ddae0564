import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { readFonts } from "../../src/cli/print-fonts.js";
import { DOTS_PER_INCH, startRasteriser } from "../../src/cli/rasterise.js";

const dist = fileURLToPath(new URL("../../dist", import.meta.url));

/** Width and height of a PNG (ISO/IEC 15948, 11.2.2). */
function sizeOf(png: Uint8Array): [number, number] {
  const bytes = Buffer.from(png);
  assert.equal(bytes.toString("latin1", 1, 4), "PNG");
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

const svg = (inside: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="72pt" height="36pt" viewBox="0 0 72 36">${inside}</svg>`;

describe("the rasteriser", () => {
  it("draws a sheet with so many dots to the inch", async () => {
    const rasterise = await startRasteriser(dist, readFonts(dist));
    assert.deepEqual(sizeOf(rasterise(svg(""), 72)), [DOTS_PER_INCH, DOTS_PER_INCH / 2]);
  });

  it("has the print font", async () => {
    const rasterise = await startRasteriser(dist, readFonts(dist));
    const letters = '<text x="2" y="20" font-size="12" font-family="Open Sans">tile</text>';
    assert.ok(rasterise(svg(letters), 72).length > rasterise(svg(""), 72).length + 200);
  });
});
