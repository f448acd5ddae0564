import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { cutPiece } from "../../src/compare/cut-piece.js";
import { edited, told, WALL } from "./wall.js";

/** All cut pieces of the wall, by their places. */
function cutsOf(text: string) {
  const wall = told(text).solved.walls[0]!;
  const lay = wall.lays[0]!;
  const cuts = Array.from({ length: lay.pieces.count }, (_, i) => cutPiece(lay, i));
  return new Map(cuts.filter(({ cut }) => cut !== "none").map((cut) => [cut.place, cut]));
}

describe("cutPiece", () => {
  it("names the place by what cuts", () => {
    const cuts = cutsOf(edited(WALL, ["at 16 5/8, 8 3/8", "at 17 5/8, 9 3/8"]));
    assert.deepEqual(
      [...cuts.keys()].sort(),
      [
        "along the top",
        "at a corner of niche shelf",
        "left of niche shelf",
        "over niche shelf",
        "right of niche shelf",
        "under niche shelf",
      ].filter((place) => cuts.has(place)),
    );
    assert.ok(cuts.has("along the top") && cuts.has("at a corner of niche shelf"));
  });

  it("measures a piece and the corner that an L cut takes out", () => {
    const cuts = cutsOf(edited(WALL, ["at 16 5/8, 8 3/8", "at 17 5/8, 9 3/8"]));
    const { cut, width, notch } = cuts.get("at a corner of niche shelf")!;
    assert.equal(cut, "notch");
    assert.deepEqual(width, { least: 4 * NM_PER.inch, most: 4 * NM_PER.inch });
    // The last one, upper right: its tile begins at 24 7/8 and 12 1/2; the niche ends at 25 7/8 and 13 1/2.
    assert.deepEqual(notch, { across: NM_PER.inch, up: NM_PER.inch });
  });

  it("finds a scribed piece along the side that was measured", () => {
    const cuts = cutsOf(
      edited(WALL, [
        "bottom counter movement",
        "bottom counter measured 0: 0, 41 3/8: 1/4 movement",
      ]),
    );
    assert.equal(cuts.get("along the bottom")?.cut, "scribe");
  });

  it("finds a piece round a hole", () => {
    const cuts = cutsOf(
      edited(WALL, ["  lay field {", "  hole spout at 6, 6 across 1\n  lay field {"]),
    );
    assert.equal(cuts.get("round hole spout")?.cut, "hole");
  });
});
