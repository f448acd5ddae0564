import assert from "node:assert/strict";
import { existsSync, readFileSync } from "node:fs";
import { filesOf } from "../../src/cli/compare-pictures.js";
import type { CompareAnswer } from "../../src/cli/job-desk.js";
import { gaugelath } from "./capture.js";
import { CLEAN } from "./plans.js";
import { workplace } from "./workplace.js";

const LOWER = CLEAN.replace("x 8 5/16", "x 7 5/16");

describe("the pictures of a comparison", () => {
  const place = workplace({
    "a/deep/bath (1).tileplan": CLEAN,
    "b/deep/bath (1).tileplan": LOWER,
    "a/same.tileplan": CLEAN,
    "b/same.tileplan": CLEAN,
  });

  it("stand beside the report that shows them", async () => {
    const words = ["compare", "a", "b", "--format", "markdown", "-o", "out"];
    assert.deepEqual(await gaugelath(place, words), { exit: 0, out: "", err: "" });
    const report = readFileSync(place.path("out/compare.md"), "utf8");
    assert.ok(report.includes("![overlay of both](deep/bath%20%281%29.overlay.svg)"), report);
    for (const name of ["overlay", "back.before-after"]) {
      assert.match(readFileSync(place.path(`out/deep/bath (1).${name}.svg`), "utf8"), /^<svg /);
    }
    assert.ok(!existsSync(place.path("out/same.overlay.svg")));
  });

  it("go to standard output where there is one", async () => {
    const { out, exit } = await gaugelath(place, ["compare", "a", "b", "--format", "svg"]);
    assert.equal(exit, 0);
    assert.match(out, /^<svg [\s\S]*<\/svg>\n$/);
    const none = await gaugelath(place, ["compare", "a", "a", "--format", "svg"]);
    assert.equal(none.exit, 2);
    assert.match(none.err, /no plan changed/);
  });

  it("stay inside of their folder", () => {
    const pair = { name: "../../up/a:b.tileplan", before: null, after: null };
    const answer = { pictures: null } as Partial<CompareAnswer> as CompareAnswer;
    assert.equal(filesOf({ pair, answer }).overlay, "up/a_b.overlay.svg");
  });
});
