import assert from "node:assert/strict";
import { check } from "../../src/rules/index.js";
import { panelText } from "../solver/free-wall-text.js";
import { solveText } from "../support/solve-text.js";

const CODE = "wall/unsettled";

function told(parts: Parameters<typeof panelText>[0], left = "free"): string[] {
  const text = panelText(parts).replace("left free", `left ${left}`);
  return check(solveText(text).solved)
    .filter(({ code }) => code === CODE)
    .map(({ message, severity, range }) => `${severity} ${range.start.line} ${message}`);
}

describe("wall/unsettled", () => {
  it("tells a place over a lay's edge that is nowhere inside the tile, at the opening", () => {
    const niche = (at: string) => `niche n {\n at ${at}\n size 6 x 6\n movement 1/8\n }`;
    assert.deepEqual(told({ openings: niche("8, 20 to 24") }), []);
    assert.deepEqual(told({ openings: niche("8, 8 to 24") }), []);
    const spanning = told({ openings: niche("0, 8 to 24") }, "wall movement 1");
    assert.equal(spanning.length, 1);
    assert.match(
      spanning[0]!,
      /^error \d+ niche n at 0 in, 8 in to 24 in reaches over the edge between the lays "dado" and "field" and is nowhere inside the tile and clear of what else is there, so that it stays at 0 in, 8 in; a range is wanted in which it is inside the tile and clear of the rest$/,
    );
  });

  it("tells a place that another lay starts from", () => {
    const openings = "niche n {\n at 8 to 12, 20\n size 6 x 6\n movement 1/8\n }";
    assert.deepEqual(told({ openings, field: "across tile centred on n" }), []);
    const [found] = told({ openings, dado: "across tile centred on n" });
    assert.match(
      found!,
      /niche n at 8 in to 12 in, 20 in would move the lay "dado", which starts from it, so that it stays at 8 in, 20 in; its own place is wanted, such as 8 in, 20 in, or a start/,
    );
  });

  it("tells a height that ends no lay, or two, at the wall", () => {
    const height = "30 to 36";
    assert.deepEqual(told({ height }), []);
    const [none] = told({ height, over: "courses 2" });
    assert.match(
      none!,
      /wall "back" may stop 30 in to 36 in up, which ends no lay's tile, so that it stays at 30 in; one/,
    );
    const [two] = told({
      height,
      field: "covers left to 20",
      more: "lay dado {\n joint 1/8\n bond stack\n covers 20 1/8 to right\n over dado\n }",
    });
    assert.match(two!, /which ends the lays "field" and "dado-2", so that it stays at 30 in;/);
  });
});
