import assert from "node:assert/strict";
import { check } from "../../src/rules/index.js";
import { panelText } from "../solver/free-wall-text.js";
import { solveText } from "../support/solve-text.js";

const CODE = "wall/unsettled";

function told(parts: Parameters<typeof panelText>[0]): string[] {
  return check(solveText(panelText(parts)).solved)
    .filter(({ code }) => code === CODE)
    .map(({ message, severity, range }) => `${severity} ${range.start.line} ${message}`);
}

describe("wall/unsettled", () => {
  it("tells a place that may lie past a lay's edge, at the opening", () => {
    const niche = (at: string) => `niche n {\n at ${at}\n size 6 x 6\n movement 1/8\n }`;
    assert.deepEqual(told({ openings: niche("8, 20 to 24") }), []);
    const spanning = told({ openings: niche("8, 12 to 24") });
    assert.equal(spanning.length, 1);
    assert.match(
      spanning[0]!,
      /^error \d+ niche n may come to lie past the edges of the lays "dado" and "field", so that it stays where its range begins; its own place is wanted, or a range in which one lay has all that it takes$/,
    );
  });

  it("tells a place that another lay starts from", () => {
    const openings = "niche n {\n at 8 to 12, 20\n size 6 x 6\n movement 1/8\n }";
    assert.deepEqual(told({ openings, field: "across tile centred on n" }), []);
    const [found] = told({ openings, dado: "across tile centred on n" });
    assert.match(
      found!,
      /niche n would move the lay "dado", which starts from it, so that it stays/,
    );
  });

  it("tells a height that ends no lay, or two, at the wall", () => {
    const height = "30 to 36";
    assert.deepEqual(told({ height }), []);
    const [none] = told({ height, over: "courses 2" });
    assert.match(none!, /wall "back" may stop at a range of heights, which ends no lay's tile, so/);
    const [two] = told({
      height,
      field: "covers left to 20",
      more: "lay dado {\n joint 1/8\n bond stack\n covers 20 1/8 to right\n over dado\n }",
    });
    assert.match(two!, /which ends the lays "field" and "dado-2", so that it stays at the lowest;/);
  });
});
