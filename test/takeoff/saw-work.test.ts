import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { sawWork } from "../../src/takeoff/saw-work.js";
import { mitredText } from "../rooms/mitred-text.js";
import { cutWall, mm } from "../support/cut-wall.js";
import { takeText } from "../support/takeoff-text.js";

function work(...parts: Parameters<typeof cutWall>) {
  const { solved, taken } = cutWall(...parts);
  return sawWork(solved, taken.walls);
}

describe("the saw's work", () => {
  it("is a pass for each setting of the fence and each piece", () => {
    // Two crosscuts, two rips, and a corner with both.
    assert.equal(work({ size: "254 x 130" }).passes, 2 + 2 + 2);
  });

  it("is two passes for an L, three for a U, four for an opening inside", () => {
    const window = (place: string) => ({
      size: "202 x 50",
      wall: [`window sash {\n${place}\nmovement 0\n}`],
    });
    assert.equal(work(window("at 60, 30\nsize 42 x 20")).passes, 2);
    assert.equal(work(window("at 20, 30\nsize 20 x 20")).passes, 3);
    assert.equal(work(window("at 20, 10\nsize 20 x 20")).passes, 4);
  });

  it("counts holes and mitres", () => {
    const parts = {
      size: "400 x 400",
      wall: [
        "hole arm at 50, 25 across 20",
        "window sash {\nat 120, 120\nsize 100 x 100\nframe nose mitre\nmovement 0\n}",
      ],
    };
    const stock = { plan: ["trim nose {\nface 200 x 20\nthickness 8\n}"] };
    const { holes, mitres } = work(parts, stock);
    assert.deepEqual({ holes, mitres }, { holes: 1, mitres: 8 });
  });

  it("tells mitred ends of trim from mitred edges of tile", () => {
    const { solved, taken } = takeText(mitredText());
    const { mitres, mitredEdges, mitreLength } = sawWork(solved, taken.walls);
    // Eight courses on each wall, by hand in mitres.test.ts.
    assert.deepEqual([mitres, mitredEdges, mitreLength], [0, 16, 47.125 * NM_PER.inch]);
  });

  it("takes the plan's kerf, else 3/32 in (common practice), and says which", () => {
    const stated = work({ size: "254 x 50" }, { plan: ["saw { kerf 2.5 }"] });
    assert.deepEqual([stated.kerf, stated.kerfStated], [mm(2.5), true]);
    const usual = work({ size: "254 x 50" });
    assert.deepEqual([usual.kerf, usual.kerfStated], [(3 * NM_PER.inch) / 32, false]);
  });
});
