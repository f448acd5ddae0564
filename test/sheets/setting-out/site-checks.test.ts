import assert from "node:assert/strict";
import { siteChecks } from "../../../src/sheets/setting-out/site-checks.js";
import type { SiteCheck } from "../../../src/sheets/setting-out/site-check.js";
import { inches, laid, type WallText, wallText } from "./plans.js";

function checks(text: WallText, ...others: string[]): SiteCheck[] {
  const { plan, wall } = laid(wallText(text), ...others);
  return siteChecks(plan, wall);
}

function ofKind(found: readonly SiteCheck[], kind: SiteCheck["measure"]["kind"]): SiteCheck[] {
  return found.filter(({ measure }) => measure.kind === kind);
}

describe("the checks of a wall", () => {
  it("are its sides and dry runs of tile, each with the plan's figure", () => {
    const kinds = checks({}).map(({ measure }) => measure.kind);
    assert.deepEqual(kinds, ["side", "side", "side", "side", "run", "run"]);
  });

  it("tell the tile and bed that cover an end: between its joint and a cut that shows too little", () => {
    const side = wallText({ name: "side", right: "corner back over" });
    const [build] = ofKind(checks({ left: "corner side under" }, side), "build");
    // 3/8 tile and 1/8 bed cover 1/2; the end's joint is 1/8; 3 5/8 of 4 is seen, 1 5/8 over half.
    assert.equal(build!.planned, inches(0.5));
    assert.deepEqual(build!.least, { at: inches(0.125), then: "end-shows" });
    assert.deepEqual(build!.most, { at: inches(2.125), then: "under-half" });
  });

  it("share what a run may be off by among its tiles", () => {
    // From the left plumb line at 4 1/4 to the tile's right end at 39 7/8: 8 modules of 4 1/8.
    const [across] = ofKind(checks({}), "run");
    assert.deepEqual(across!.measure, { kind: "run", direction: "across", count: 8 });
    assert.equal(across!.planned, inches(33));
    assert.deepEqual(across!.most, { at: inches(33.625), then: "under-half" });
    assert.deepEqual(across!.least, { at: inches(31.625), then: "joint-opens" });
  });

  it("lay ten tiles at most, and allow as much of the slack as they are of all", () => {
    const [across] = ofKind(checks({ size: "122 x 24" }), "run");
    // 28 modules; the end is 2 1/8 wide, 1/8 over half.
    assert.deepEqual(across!.measure, { kind: "run", direction: "across", count: 10 });
    const slack = Math.floor((inches(across!.most ? 0.125 : 0) * 10) / 28);
    assert.equal(across!.most!.at - across!.planned, slack);
  });

  it("measure a wall from end to end where it is too narrow for plumb lines", () => {
    const found = checks({ size: "7 3/8 x 24" });
    const widths = ofKind(found, "width");
    assert.deepEqual(
      widths.map(({ planned }) => planned),
      [inches(7.375), inches(7.375)],
    );
    // One whole and 3 in: 1 in to half, but the whole one's joint closes after 1/8.
    assert.deepEqual(widths[0]!.least, { at: inches(7.25), then: "joint-closes" });
    assert.ok(
      ofKind(found, "side").every(({ measure }) => "side" in measure && measure.side !== "left"),
    );
  });

  it("are none where nothing is laid", () => {
    const { plan } = laid(wallText(), 'wall bare "Bare" {\n  size 10 x 10\n}');
    assert.deepEqual(siteChecks(plan, plan.walls[1]!), []);
  });

  it("are of what is still to come where courses are set", () => {
    const text = {
      inside:
        "  niche low {\n    at 8, 2\n    size 8 x 4\n  }\n  niche high {\n    at 8, 14\n    size 8 x 4\n  }",
    };
    const planned = checks(text);
    const found = checks({ ...text, set: "courses 1 to 2" });
    const openings = ofKind(found, "opening").map(
      ({ measure }) => "opening" in measure && measure.opening.name,
    );
    assert.deepEqual(new Set(openings), new Set(["high"]));
    const sides = ofKind(found, "side").map(({ measure }) => "side" in measure && measure.side);
    assert.deepEqual(sides, ["left", "right", "top"]);
    // From the bottom of course 3 at 8 3/8; what closes there is what closes over the whole wall.
    const top = (list: readonly SiteCheck[]) =>
      list.find(({ measure }) => measure.kind === "side" && measure.side === "top")!;
    assert.equal(top(found).planned, inches(24 - 8.375));
    assert.equal(
      top(planned).planned - top(planned).least!.at,
      top(found).planned - top(found).least!.at,
    );
  });

  it("leave out readings along what is set", () => {
    const text = { right: "wall measured 0: 0, 4: -1/4, 20: 0", set: "courses 1 to 2" };
    const right = ofKind(checks(text), "side").filter(
      ({ measure }) => "side" in measure && measure.side === "right",
    );
    assert.deepEqual(
      right.map(({ measure }) => "at" in measure && measure.at),
      [inches(20)],
    );
  });

  it("are none where all is set", () => {
    assert.deepEqual(checks({ set: "courses 1 to 6" }), []);
  });
});
