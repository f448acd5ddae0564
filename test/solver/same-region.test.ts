import assert from "node:assert/strict";
import { isSameRegion } from "../../src/solver/same-region.js";
import type { Region, Takeaway } from "../../src/solver/solved.js";
import { firstWall, solveClean } from "../support/solve-text.js";

const REGION: Region = firstWall(
  solveClean(`units mm
tile t { face 99 x 99
 thickness 8 }
wall w {
  size 1000 x 1000
  bottom pan measured 0: 0, 1000: 5 movement 3
  window sash { at 300, 300
   size 200 x 200
   movement 3 }
  hole valve at 700, 700 across 60
  lay t { bond stack
   joint 1
   across full tile from left
   up full course from bottom }
}
`),
).laid.region;

const shifted = <T extends { readonly left: number }>(box: T): T => ({
  ...box,
  left: box.left + 1,
});

describe("isSameRegion", () => {
  it("says yes of a copy, whatever takes the places", () => {
    const [taken] = REGION.takeaways;
    const opening = { ...taken!.opening, name: "other" } as Takeaway["opening"];
    assert.ok(isSameRegion(REGION, structuredClone(REGION)));
    assert.ok(isSameRegion(REGION, { ...REGION, takeaways: [{ ...taken!, opening }] }));
  });

  it("says no where any part of it stands elsewhere", () => {
    const [taken] = REGION.takeaways;
    const [round] = REGION.roundHoles;
    const { bottom } = REGION;
    const changes: Partial<Region>[] = [
      { bounds: shifted(REGION.bounds) },
      { between: { left: 0, right: 1 } },
      { takeaways: [] },
      { takeaways: [{ ...taken!, box: shifted(taken!.box) }] },
      { roundHoles: [{ ...round!, box: shifted(round!.box) }] },
      { steps: [taken!.box] },
      { hiddenLeft: bottom },
      { bottom: { ...bottom, value: bottom.value.map((value) => value + 1) } },
      { bottom: { at: bottom.at.slice(1), value: bottom.value.slice(1) } },
    ];
    for (const change of changes) {
      assert.equal(isSameRegion(REGION, { ...REGION, ...change }), false, JSON.stringify(change));
    }
  });
});
