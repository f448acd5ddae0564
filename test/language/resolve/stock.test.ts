import assert from "node:assert/strict";
import { INCH, planOf, STOCK, told } from "../telling.js";

describe("a tile", () => {
  it("has all that its block says", () => {
    const [tile] = planOf(
      'tile field "3 x 6" {\n face 5 7/8 x 2 7/8\n thickness 5/16\n variation 1/64\n warpage 1/32\n edges rectified\n box 88\n}\n',
    ).tiles;
    const { origin, ...rest } = tile!;
    assert.deepEqual(rest, {
      name: "field",
      title: "3 x 6",
      face: { across: 149_225_000, up: 73_025_000 },
      thickness: 7_937_500,
      variation: 396_875,
      warpage: 793_750,
      edges: "rectified",
      box: 88,
      directional: false,
      lot: null,
      price: null,
      breakage: null,
      spares: null,
      allows: [],
    });
    assert.deepEqual(origin.head, {
      start: { line: 0, character: 5 },
      end: { line: 0, character: 10 },
    });
    assert.deepEqual(origin.range.end, { line: 7, character: 1 });
  });

  it("leaves unsaid what its block leaves unsaid", () => {
    const [tile] = planOf(STOCK).tiles;
    const { variation, warpage, edges, box } = tile!;
    assert.deepEqual([variation, warpage, edges, box], [null, null, null, null]);
  });

  it("without a face is told and left out, but its name is known", () => {
    const text =
      "tile a {\n  thickness 1\n}\nwall w {\n  size 4 x 5\n  lay a {\n    bond stack\n    joint 0\n  }\n}\n";
    assert.deepEqual(told(text), [
      "plan/missing [a] found no `face`, wanted the tile's face, such as `face 5 7/8 x 2 7/8`",
    ]);
    assert.deepEqual(planOf(text).tiles, []);
    assert.deepEqual(planOf(text).walls[0]!.lays, []);
  });

  it("whose face is broken is told once", () => {
    assert.deepEqual(told("tile a {\n  face 5\n  thickness 1\n}\n").length, 1);
  });

  it("without a thickness is told and counts as having none", () => {
    const text = "tile a {\n  face 1 x 1\n}\n";
    assert.deepEqual(told(text), [
      "plan/missing [a] found no `thickness`, wanted one, such as `thickness 5/16`",
    ]);
    assert.equal(planOf(text).tiles[0]!.thickness, 0);
  });

  it("comes in boxes of a whole number", () => {
    for (const box of ["0", "-1", "2.5", "88in", "1/3", "2000000"]) {
      assert.deepEqual(told(`tile a {\n  face 1 x 1\n  thickness 1\n  box ${box}\n}\n`), [
        `plan/box [${box}] found no number of pieces, wanted a whole number, such as 88`,
      ]);
    }
    const text = "tile a {\n  face 1 x 1\n  thickness 1\n  box 8 * 11\n}\n";
    assert.equal(planOf(text).tiles[0]!.box, 88);
  });
});

describe("a trim", () => {
  it("has a face along and across", () => {
    const [trim] = planOf(STOCK).trims;
    assert.deepEqual(trim!.face, { along: 5.875 * INCH, across: 1.875 * INCH });
  });

  it("without a face is told", () => {
    assert.deepEqual(told("trim a {\n  thickness 1\n}\n"), [
      "plan/missing [a] found no `face`, wanted the trim's face along and across, such as `face 5 7/8 x 1 7/8`",
    ]);
  });

  it("has no variation: that belongs in a tile", () => {
    const [message] = told("trim a {\n  face 1 x 1\n  thickness 1\n  variation 1\n}\n");
    assert.match(message!, /; it belongs in a tile$/);
  });
});
