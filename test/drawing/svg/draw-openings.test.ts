import assert from "node:assert/strict";
import { drawHoles, drawOpenings, drawTrims } from "../../../src/drawing/svg/draw-openings.js";
import { planOf, wallOf, wallText } from "../support/scene-of.js";
import { drawn, valuesOf } from "../support/sheet.js";

const opening = (kind: string) =>
  `  ${kind} it {\n    at 12, ${kind === "door" ? 0 : 9}\n    size 10 x 12\n    movement 1/8\n  }`;

describe("drawing openings", () => {
  it("gives a window, a niche and a door each a sign of its own", () => {
    const signs = ["window", "niche", "door"].map((kind) => {
      const wall = wallOf(planOf(wallText(opening(kind))));
      const svg = drawn((into) => drawOpenings(into, wall, 10));
      assert.deepEqual(valuesOf(svg, "id"), ["gl-back-opening-it"]);
      assert.ok(svg.includes(`gl-fill-${kind}`));
      return `${svg.split("\n").length} ${valuesOf(svg, "d")[1]!.replace(/[-\d. ]/g, "")}`;
    });
    assert.equal(new Set(signs).size, 3);
  });

  it("shows what stands before the wall as solid, with a hatched border", () => {
    for (const kind of ["bench", "curb", "soffit"]) {
      const wall = wallOf(planOf(wallText(opening(kind))));
      const svg = drawn((into) => drawOpenings(into, wall, 10));
      assert.ok(svg.includes("gl-fill-build"), kind);
      const [, hatch] = valuesOf(svg, "d");
      // Slant lines alone: a move and a line each.
      assert.match(hatch!, /^(M[-\d. ]+L[-\d. ]+){20,}$/);
    }
  });

  it("draws a hole round, with a cross at its middle", () => {
    const wall = wallOf(planOf(wallText("  hole valve at 20, 15 across 3")));
    const svg = drawn((into) => drawHoles(into, wall, 10));
    assert.ok(svg.includes('cx="508" cy="-381" r="38.1"'));
  });

  it("draws a plate as a thin dashed rim", () => {
    const of = (plate: string) => {
      const wall = wallOf(planOf(wallText(`  hole valve at 20, 15 across 3 plate ${plate}`)));
      return drawn((into) => drawHoles(into, wall, 10));
    };
    const dashed = 'stroke-dasharray="3 1 0.8 1"';
    assert.ok(of("6").includes('cx="508" cy="-381" r="76.2"') && of("6").includes(dashed));
    const square = of("6 x 4");
    assert.equal(square.match(/<circle/g)!.length, 1);
    assert.ok(
      square.includes("M431.8 -330.2H584.2V-431.8H431.8z") && square.includes(dashed),
      square,
    );
  });

  it("draws frames by side, cut lengths apart from whole ones", () => {
    const framed = opening("window").replace("movement", "frame nose mitre\n    movement");
    const wall = wallOf(planOf(wallText(framed)));
    const ids = valuesOf(
      drawn((into) => drawTrims(into, wall, 10)),
      "id",
    );
    for (const side of ["left", "right", "bottom", "top"]) {
      assert.ok(ids.includes(`gl-back-trim-cut-it-${side}`), side);
    }
    const bare = wallOf(planOf(wallText()));
    assert.equal(
      drawn((into) => drawTrims(into, bare, 10)),
      "<g/>\n",
    );
  });
});
