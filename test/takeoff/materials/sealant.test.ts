import assert from "node:assert/strict";
import { materialsOf } from "../../../src/takeoff/materials/materials.js";
import { solveClean } from "../../support/solve-text.js";

function sealantOf(height: string, movement: string, stock: string) {
  const text = `${stock}
tile field {
  face 6 x 3
  thickness 1/4
}
wall back {
  size 40 x ${height}
  left wall movement ${movement}
  right free
  bottom free
  top free
  lay field {
    bond stack
    joint 1/8
  }
}
`;
  const { plan, solved } = solveClean(text);
  const sealant = materialsOf(solved).sealant;
  assert.equal(sealant.length, 1);
  return { tube: plan.sealant?.tube ?? 0, ...sealant[0]! };
}

const CUBIC_INCH = 25.4 ** 3;

describe("sealant", () => {
  // midwestsealantsupply.com/23823/24023.html: 10.1 fl oz = 18.2 in3; a 1/4 x 1/4 bead -> 24 ft.
  it("of one tube of 10.1 fl oz fills 24 ft of a 1/4 x 1/4 bead, and no 25", () => {
    const stock = "sealant {\n tube 10.1 floz\n depth 1/4\n}";
    const [enough, more] = [sealantOf("24ft", "1/4", stock), sealantOf("25ft", "1/4", stock)];
    assert.equal(enough.volume, Math.ceil(18 * CUBIC_INCH));
    assert.ok(enough.volume <= enough.tube);
    assert.ok(more.volume > more.tube);
    assert.equal(Math.floor(enough.tube / (CUBIC_INCH / 16) / 12), 24);
  });

  // Depth: half the width at most, 1/8 in at least (fcimag.com/articles/84636).
  it("is half as deep as wide, and 1/8 in at least, where the plan doesn't say", () => {
    const inch = 25_400_000;
    assert.equal(sealantOf("96", "1/2", "").depth, inch / 4);
    assert.equal(sealantOf("96", "1/4", "").depth, inch / 8);
    assert.equal(sealantOf("96", "1/16", "").depth, inch / 8);
    assert.equal(sealantOf("96", "1/2", "sealant {\n depth 3/16\n}").depth, (inch * 3) / 16);
  });

  it("is rounded up to the mm³", () => {
    const { volume } = sealantOf("96", "1/8", "");
    assert.equal(volume, Math.ceil((96 / 64) * CUBIC_INCH));
  });
});
