import assert from "node:assert/strict";
import { materialsOf } from "../../../src/takeoff/materials/materials.js";
import { solveClean } from "../../support/solve-text.js";

/** A wall of ten by ten whole modules, so that every tile has its share of the joints. */
function tenByTen(face: number, joint: number, depth: number, stock: string): string {
  const size = 10 * (face + joint);
  return `units mm
${stock}
tile field {
  face ${face} x ${face}
  thickness ${depth}
}
wall back {
  size ${size} x ${size}
  left free
  right free
  bottom free
  top free
  lay field {
    bond stack
    joint ${joint}
    across full tile from left
    up full course from bottom
  }
}
`;
}

function groutOf(text: string) {
  return materialsOf(solveClean(text).solved).grout[0]!;
}

/** kg/m2 by the trade's formula, in millimetres and g/cm³. */
function published(l: number, w: number, joint: number, depth: number, density: number): number {
  return ((l + w) / (l * w)) * joint * depth * density;
}

describe("grout", () => {
  // (L + W)/(L W) x J x depth x density: 300 x 300, 4 mm, 10 deep, 1.6 -> 0.427 (tilersforums.com/threads/39223).
  it("is a little less than the trade's formula, which counts crossings twice", () => {
    assert.equal(published(300, 300, 4, 10, 1.6).toFixed(3), "0.427");
    const grout = groutOf(tenByTen(300, 4, 10, "grout {\n density 1.6\n}"));
    const perSquareMetre = grout.mass! / 3.04 ** 2;
    const exact = (1 - 300 ** 2 / 304 ** 2) * 10 * 1.6;
    assert.equal(perSquareMetre.toFixed(6), exact.toFixed(6));
    assert.ok(perSquareMetre < published(300, 300, 4, 10, 1.6));
  });

  it("of a mosaic is far less than that", () => {
    const grout = groutOf(tenByTen(20, 4, 6, "grout {\n density 1.6\n}"));
    const exact = (1 - 20 ** 2 / 24 ** 2) * 6 * 1.6;
    assert.equal((grout.mass! / 0.24 ** 2).toFixed(6), exact.toFixed(6));
    assert.ok(exact < 0.8 * published(20, 20, 4, 6, 1.6));
  });

  it("has a volume in whole mm³, and no mass where the plan states no density", () => {
    const grout = groutOf(tenByTen(300, 4, 10, ""));
    assert.deepEqual(grout, {
      wall: "back",
      tile: "field",
      volume: (3040 ** 2 - 100 * 300 ** 2) * 10,
      mass: null,
    });
  });

  it("is as deep between trims as the trims are thick", () => {
    const stock =
      "tile field {\n face 6 x 3\n thickness 1/4\n}\ntrim nose {\n face 6 x 2\n thickness 3/8\n}\n";
    const text = `${stock}wall back {
  size 8 1/8 x 12 1/4
  left free trim nose
  right free
  bottom free
  top free
  lay field {
    bond stack
    joint 1/8
    across full tile from left
    up full course from bottom
  }
}
`;
    const [tiles, trims] = [(6 * 3) / 8 + 12.25 / 8, (2 * 2) / 8];
    const cubicInches = tiles * (1 / 4) + trims * (3 / 8);
    assert.equal(groutOf(text).volume, Math.ceil(cubicInches * 25.4 ** 3));
  });
});
