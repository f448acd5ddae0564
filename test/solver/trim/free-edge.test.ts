import assert from "node:assert/strict";
import { firstWall, solveClean } from "../../support/solve-text.js";

const plan = (...sides: readonly string[]) =>
  [
    'plan "free edges"',
    "units mm",
    "tile field {\n  face 100 x 50\n  thickness 8\n}",
    "trim edging {\n  face 100 x 20\n  thickness 8\n}",
    "wall back {",
    "  size 400 x 300",
    ...sides.map((side) => `  ${side}`),
    "  lay field {",
    "    bond stack",
    "    joint 2",
    "    across tile centred on wall",
    "    up full course from bottom",
    "  }",
    "}",
    "",
  ].join("\n");

const outlines = (...sides: readonly string[]) =>
  firstWall(solveClean(plan(...sides))).wall.trims.map((run) =>
    run.pieces.map(({ shape }) => shape.outline.map((nm) => nm / 1e6)),
  );

describe("layFreeEdges", () => {
  it("lays none where no free side has trim", () => {
    assert.deepEqual(outlines("top free", "left free"), []);
  });

  it("runs upright trim past a trimmed top, which stands between", () => {
    const [left, top] = outlines("left free trim edging", "top free trim edging");
    assert.deepEqual(left!.at(-1)!.slice(4, 6), [20, 300]);
    assert.equal(Math.min(...top!.flat().filter((_, i) => i % 2 === 0)), 22);
  });

  it("follows a measured side round its bends", () => {
    const [top] = outlines("top free trim edging measured 0: 0, 180: 10, 400: 0");
    const middle = top!.find((ring) => ring.length > 8)!;
    assert.ok(middle.join().includes("180,290"), "the inner edge bends with the side");
    assert.ok(middle.join().includes("180,310"), "and so does the outer one");
  });

  it("ends a level run where the side beside it stands furthest in", () => {
    const [, top] = outlines(
      "left free trim edging measured 0: 0, 300: 15",
      "top free trim edging",
    );
    const from = Math.min(...top!.flat().filter((_, i) => i % 2 === 0));
    assert.equal(from, 15 + 22);
  });

  it("ends an upright run where the side under it stands highest", () => {
    const [left] = outlines("left free trim edging", "bottom pan measured 0: 10, 20: 0 movement 3");
    assert.equal(Math.min(...left!.flat().filter((_, i) => i % 2 === 1)), 13);
  });
});
