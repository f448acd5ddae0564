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

  it("leaves out what an opening or a bench takes, and no more than its soft joint off it", () => {
    const bench = "bench seat {\n at 250\n size 140 x 100\n movement 4\n }";
    const [right] = outlines("right free trim edging", "bottom floor movement 3", bench);
    assert.deepEqual(Math.min(...right!.flat().filter((_, i) => i % 2 === 1)), 104);
    const niche = "niche shelf {\n at 100, 200\n size 150 x 90\n movement 4\n }";
    const across = outlines("top free trim edging", niche)
      .flat(2)
      .filter((_, i) => i % 2 === 0);
    assert.deepEqual(
      across.filter((x) => x > 90 && x < 260).sort((a, b) => a - b),
      [96, 96, 254, 254],
    );
  });

  it("goes on beside an opening whose soft joint alone comes into it", () => {
    const niche = "niche shelf {\n at 100, 180\n size 150 x 98\n movement 4\n }";
    const [top] = outlines("top free trim edging", niche);
    const across = top!.flat().filter((_, i) => i % 2 === 0);
    assert.deepEqual([Math.min(...across), Math.max(...across)], [3.175, 396.825]);
    assert.ok(!across.includes(96) && !across.includes(254));
  });
});
