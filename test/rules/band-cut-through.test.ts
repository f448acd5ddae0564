import assert from "node:assert/strict";
import { edgesInBand } from "../../src/rules/band-cut-through.js";
import { bandsOf } from "../../src/rules/band.js";
import { NM_PER } from "../../src/measure/index.js";
import { bandText, bandWall } from "./band-text.js";
import { findings, messages } from "./wall-text.js";

const CODE = "band/cut-through";
const told = (back: string): string[] => messages(bandText({ back }), CODE);
const hole = (y: string, plate = "") => told(`  hole valve at 30, ${y} across 4 ${plate}`);
const niche = (y: string, high: string) =>
  told(`  niche shelf {\n at 20, ${y}\n size 12 x ${high}\n movement 1/8\n}`);

/** The liner runs from 25 to 26 in up; tile ends at 24 7/8 in under it, and begins at 26 1/8 in over it. */
describe("band/cut-through", () => {
  it("tells a hole that reaches a nanometre into a band, and where it would be clear", () => {
    // 24 7/8 - 2 - 1/2 = 22 3/8; 26 1/8 + 2 + 1/2 = 28 5/8.
    assert.deepEqual(hole("23 + nm"), [
      "hole valve, 23+ in up, goes through band liner, which runs from 25 in to 26 in; " +
        "its centre at 22 3/8 in or lower, or at 28 5/8 in or higher, is wanted",
    ]);
    assert.deepEqual(hole("23"), []);
    assert.deepEqual(hole("28"), []);
    assert.equal(hole("28 - nm").length, 1);
  });

  it("keeps a plate off the band as well", () => {
    assert.match(hole("25", "plate 8")[0]!, /its centre at 20 7\/8 in or lower, or at 30 1\/8 in/);
  });

  it("tells a sill or a head within a band, but not sides that only interrupt it", () => {
    assert.deepEqual(niche("25 1/2", "12"), [
      "the sill of niche shelf, with its joint, cuts band liner 3/8 in over its bottom and 5/8 in under its top; " +
        "a sill on either, or clear of the band, is wanted",
    ]);
    assert.match(niche("10", "15 1/4")[0]!, /^the head of niche shelf, with its joint, cuts band/);
    assert.deepEqual(niche("20", "12"), []);
    assert.deepEqual(niche("25 1/8", "12"), [], "its joint begins at the band's bottom");
    assert.deepEqual(niche("26 1/8", "12"), [], "its joint begins at the band's top");
    assert.equal(niche("25 1/4", "1/2").length, 2);
  });

  it("tells how far an edge is from the band's own", () => {
    const [band] = bandsOf(bandWall().wall);
    const IN = NM_PER.inch;
    assert.deepEqual(edgesInBand(band!, { bottom: 25.25 * IN, top: 40 * IN }), [
      { edge: "sill", down: IN / 4, up: (3 * IN) / 4 },
    ]);
    assert.deepEqual(edgesInBand(band!, { bottom: 20 * IN, top: 25 * IN }), []);
  });

  it("speaks at the hole or the opening, as a warning, and is silenced by an allow", () => {
    const back = "  hole valve at 30, 25 across 4";
    const [found] = findings(bandText({ back }), CODE);
    assert.deepEqual([found!.severity, found!.wall], ["warning", "back"]);
    const allowed = bandText({ back: `${back}\n  allow ${CODE} "the old pipes stay"` });
    assert.equal(findings(allowed, CODE)[0]!.allowed, "the old pipes stay");
  });
});
