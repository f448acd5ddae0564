import assert from "node:assert/strict";
import { plainStatement } from "./plain-statement.js";

/** Of each block, lines that may stand in it. */
const BLOCKS: Record<string, Record<string, unknown>> = {
  "tile t": {
    "face 4 x 2": { kind: "face", first: "4", second: "2" },
    "thickness 5/16": { kind: "thickness", length: "5/16" },
    "variation 1/32": { kind: "variation", length: "1/32" },
    "warpage 1/64": { kind: "warpage", length: "1/64" },
    "edges rectified": { kind: "edges", finish: "rectified" },
    "box 20": { kind: "box", length: "20" },
    directional: { kind: "directional" },
    'lot "L-1"': { kind: "lot", lot: '"L-1"' },
    "price 42.50 a box": { kind: "price", price: "42.50", per: "box" },
    "breakage 5%": { kind: "breakage", percent: "5" },
    "spares 3": { kind: "spares", length: "3" },
  },
  "trim t": { "price 3 a piece": { kind: "price", price: "3", per: "piece" } },
  saw: {
    "kerf 1/16": { kind: "kerf", length: "1/16" },
    "rip 1/4": { kind: "rip", length: "1/4" },
  },
  mortar: {
    "notch 1/4 x 3/8": { kind: "notch", first: "1/4", second: "3/8" },
    "bag 50 lb covers 45sqft": { kind: "bag", mass: "50 lb", covers: "45sqft" },
    "back-butter 1/16": { kind: "back-butter", length: "1/16" },
    "price 20 a bag": { kind: "price", price: "20", per: "bag" },
  },
  grout: {
    "density 1.6": { kind: "density", density: "1.6" },
    "bag 5 kg": { kind: "bag", mass: "5 kg", covers: null },
  },
  sealant: {
    "tube 300 ml": { kind: "tube", volume: "300 ml" },
    "depth 1/8": { kind: "depth", length: "1/8" },
    "price 9 a tube": { kind: "price", price: "9", per: "tube" },
  },
};

describe("stock in the syntax tree", () => {
  for (const [block, lines] of Object.entries(BLOCKS)) {
    for (const [line, wanted] of Object.entries(lines)) {
      it(`has ${line} of ${block}`, () => {
        assert.deepEqual(plainStatement(`${block} {\n  ${line}\n}\n`, 0, 0), wanted);
      });
    }
  }

  it("has names and titles of blocks, where a block may have them", () => {
    const wanted = { kind: "tile", name: "t", title: '"T 1"', body: [] };
    assert.deepEqual(plainStatement('tile t "T 1" {\n}\n', 0), wanted);
    assert.deepEqual(plainStatement("trim t {\n}\n", 0), {
      ...wanted,
      kind: "trim",
      title: null,
    });
    for (const kind of ["mortar", "grout", "sealant"]) {
      const found = plainStatement(`${kind} "T 1" {\n}\n`, 0);
      assert.deepEqual(found, { ...wanted, kind, name: null });
    }
    assert.deepEqual(plainStatement("saw {\n}\n", 0), { kind: "saw", name: null, body: [] });
  });
});
