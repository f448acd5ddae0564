import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import type { SiteCheck, Stop } from "../../../src/sheets/setting-out/site-check.js";
import { siteChecks } from "../../../src/sheets/setting-out/site-checks.js";
import { check } from "../../../src/rules/index.js";
import { solveClean } from "../../support/solve-text.js";
import { inches, laid, planOf, type WallText, wallText } from "./plans.js";

function sides(text: WallText, ...others: string[]): SiteCheck[] {
  const { plan, wall } = laid(wallText(text), ...others);
  return siteChecks(plan, wall).filter(({ measure }) => measure.kind === "side");
}

function sideOf(checks: readonly SiteCheck[], side: string): SiteCheck {
  const found = checks.find(({ measure }) => measure.kind === "side" && measure.side === side);
  assert.ok(found, side);
  return found;
}

describe("checks of a wall's sides", () => {
  it("tell what the plan has between a plumb line and its corner, and where to stop", () => {
    // The right plumb line at 37 1/8; the end cut is 2 5/8 of 4: 5/8 to half, 1 3/8 to whole.
    const right = sideOf(sides({}), "right");
    assert.equal(right.planned, inches(2.875));
    assert.deepEqual(right.least, { at: inches(2.25), then: "under-half" });
    assert.deepEqual(right.most, { at: inches(4.25), then: "joint-opens" });
  });

  it("stop where a joint closes at a whole tile", () => {
    const left = sideOf(sides({}), "left");
    assert.deepEqual(left.least, { at: inches(4.125), then: "joint-closes" });
    assert.equal(left.most, null);
  });

  it("tell a measured side at each reading, by the courses that are cut there", () => {
    const right = sides({ right: "wall measured 0: 1/4, 24: -1/4" }).filter(
      ({ measure }) => measure.kind === "side" && measure.side === "right",
    );
    assert.deepEqual(
      right.map(({ planned, least }) => [planned, least?.at]),
      [
        [inches(3.125), inches(2.25)],
        [inches(2.625), inches(2.25)],
      ],
    );
  });

  it("let whole tiles of a scribed course be cut too", () => {
    const bottom = sides({ bottom: "pan measured 0: 0, 40: 1", up: "joint at 4" }).filter(
      ({ measure }) => measure.kind === "side" && measure.side === "bottom",
    );
    assert.ok(bottom.every(({ least }) => least?.then === "under-half"));
  });

  it("pass over a free end, where nothing stands", () => {
    const free = wallText().replace("right wall movement 1/8", "right free");
    const { plan, wall } = laid(free);
    const found = siteChecks(plan, wall).map(({ measure }) => "side" in measure && measure.side);
    assert.ok(!found.includes("right"));
  });
});

/** The widths and heights of the walls that the rules are asked about, in 32nds of an inch. */
const STEPS = [0, 7, 13, 21, 29, 38, 46, 55, 63, 71, 82, 95, 104, 117];

// The plan's own rules are the judge: nothing is wrong at the stop, and something just past it.
describe("the values at which to stop", () => {
  for (const bond of ["stack", "running 1/2"]) {
    it(`are where the rules begin to tell it, in ${bond}`, () => {
      let tried = 0;
      for (const step of STEPS) {
        tried += holdsAtStop({ bond }, "right", 40 + step / 32, 24);
        tried += holdsAtStop({ bond }, "top", 40, 24 + step / 32);
      }
      assert.ok(tried >= 10, `${tried} stops were tried`);
    });
  }
});

const CODES: Partial<Record<Stop["then"], string>> = {
  sliver: "cut/sliver",
  "under-half": "cut/under-half",
};

/** Moves a side to its stop and 1 nm past it; 1 where there was a stop to try. */
function holdsAtStop(text: WallText, side: "right" | "top", across: number, up: number): number {
  const size = (x: number, y: number) => wallText({ ...text, size: `${mm(x)} x ${mm(y)}` });
  const [width, height] = [inches(across), inches(up)];
  const { least, planned } = sideOf(sides({ ...text, size: `${mm(width)} x ${mm(height)}` }), side);
  const code = least && CODES[least.then];
  if (!least || !code) return 0;
  const by = planned - least.at;
  const at = (more: number) =>
    side === "right" ? size(width - by - more, height) : size(width, height - by - more);
  assert.deepEqual(told(at(0), code, side), [], `${side} of ${across} x ${up} at ${least.then}`);
  assert.notDeepEqual(
    told(at(1), code, side),
    [],
    `${side} of ${across} x ${up} past ${least.then}`,
  );
  return 1;
}

/** The findings of that code about widths, or about heights. */
function told(wall: string, code: string, side: "right" | "top"): string[] {
  const word = side === "right" ? "wide" : "high";
  return check(solveClean(planOf(wall)).solved)
    .filter((found) => found.code === code && found.message.includes(` ${word};`))
    .map(({ message }) => message);
}

function mm(nm: number): string {
  return `${nm / NM_PER.mm}mm`;
}
