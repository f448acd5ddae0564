import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import type { Side } from "../../../src/model/index.js";
import { check } from "../../../src/rules/index.js";
import type { SiteCheck } from "../../../src/sheets/setting-out/site-check.js";
import { siteChecks } from "../../../src/sheets/setting-out/site-checks.js";
import { solveClean } from "../../support/solve-text.js";
import { inches, laid, planOf, wallText } from "./plans.js";

/** An opening from left to right and bottom to top, nanometres. */
interface Opening {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

const SASH: Opening = {
  left: inches(14),
  right: inches(22),
  bottom: inches(9.5),
  top: inches(17),
};

const mm = (nm: number) => `${nm / NM_PER.mm}mm`;

function withSash({ left, right, bottom, top }: Opening, kind = "window", more = ""): string {
  const inside = [
    `  ${kind} sash {`,
    `    at ${mm(left)}, ${mm(bottom)}`,
    `    size ${mm(right - left)} x ${mm(top - bottom)}`,
    "    movement 1/8",
    more,
    "  }",
  ];
  return wallText({ inside: inside.join("\n") });
}

function checksOf(text: string): Map<Side | null, SiteCheck> {
  const { plan, wall } = laid(text);
  const found = siteChecks(plan, wall).filter(({ measure }) => measure.kind === "opening");
  return new Map(found.map((each) => [sideOf(each), each]));
}

function sideOf({ measure }: SiteCheck): Side | null {
  return measure.kind === "opening" ? measure.side : null;
}

describe("checks of openings", () => {
  const checks = checksOf(withSash(SASH));

  it("tell each side of the rough opening from the line that faces it", () => {
    // Plumb lines at 4 1/4 and 37 1/8, the working line at 4 1/4.
    const planned = [...checks].map(([side, found]) => [side, found.planned]);
    assert.deepEqual(planned, [
      ["left", inches(9.75)],
      ["right", inches(15.125)],
      ["bottom", inches(5.25)],
      ["top", inches(12.75)],
    ]);
  });

  it("stop where the sill leaves too little of the course under it, or more than a tile", () => {
    // Course 3 is from 8 3/8 to 12 3/8; tile ends at 9 3/8: 1 in is left, a sliver already.
    assert.equal(checks.get("bottom")!.least, null);
    assert.deepEqual(checks.get("bottom")!.most, { at: inches(8.25), then: "joint-opens" });
  });

  it("stop where the rules begin to tell it", () => {
    for (const side of ["left", "right", "top"] as const) {
      const { planned, least, most } = checks.get(side)!;
      const stop = side === "top" ? most : least;
      assert.equal(stop!.then, side === "left" ? "sliver" : "under-half", side);
      const told = (sash: Opening) => countTold(withSash(sash), `cut/${stop!.then}`);
      const by = Math.abs(planned - stop!.at);
      const out = side === "left" ? -1 : 1;
      const moved = (more: number) => ({ ...SASH, [side]: SASH[side] + out * (by + more) });
      assert.equal(told(moved(0)), told(SASH), side);
      assert.ok(told(moved(1)) > told(SASH), side);
    }
  });

  it("pass over what a door takes from the floor, and what reaches past the tile", () => {
    const door = checksOf(withSash({ ...SASH, bottom: 0 }, "door"));
    assert.deepEqual([...door.keys()], ["left", "right", "top"]);
    const high = checksOf(withSash({ ...SASH, top: inches(23.875) }));
    assert.deepEqual([...high.keys()], ["left", "right", "bottom"]);
  });

  it("reckon with the frame's joint where the opening has a frame", () => {
    // The frame's outer edge is 1 in out, and one joint more: 12 7/8, in the joint left of 12 1/2 to 16 1/2.
    const framed = { ...SASH, left: inches(13.625) };
    const left = checksOf(withSash(framed, "window", "    frame nose mitre")).get("left")!;
    assert.deepEqual(left.least, { at: left.planned - inches(0.125), then: "joint-closes" });
  });
});

/** How many pieces a rule tells. */
function countTold(wall: string, code: string): number {
  const found = check(solveClean(planOf(wall)).solved).filter((each) => each.code === code);
  return new Set(found.flatMap(({ pieces }) => pieces ?? [])).size;
}
