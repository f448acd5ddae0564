import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { gaugelath } from "./capture.js";
import { BROKEN, CLEAN, FAULTY } from "./plans.js";
import { workplace } from "./workplace.js";

const TWO = CLEAN + CLEAN.slice(CLEAN.indexOf("wall back")).replace("wall back", "wall front");

describe("gaugelath options", () => {
  const place = workplace({
    "clean.tileplan": CLEAN,
    "faulty.tileplan": FAULTY,
    "broken.tileplan": BROKEN,
    "two.tileplan": TWO,
  });

  it("lays the options of every wall side by side", async () => {
    const { exit, out, err } = await gaugelath(place, ["options", "two.tileplan"]);
    assert.match(out, /^Test bench\n\nwall back \(Back wall\)/);
    assert.match(out, /\nwall front \(Back wall\)/);
    assert.equal(out.match(/ slivers /g)?.length, 2);
    assert.deepEqual([exit, err], [0, ""]);
  });

  it("gives them as JSON, and tells findings on standard error", async () => {
    const { exit, out, err } = await gaugelath(place, [
      ...["options", "faulty.tileplan", "--format", "json"],
    ]);
    const { walls } = JSON.parse(out) as { walls: { options: object[] }[] };
    assert.ok(walls[0]!.options.length >= 2);
    assert.match(err, /\[joint\/too-narrow\]/);
    assert.equal(exit, 1);
  });

  it("lays what could be understood of a broken plan", async () => {
    const { exit, out } = await gaugelath(place, ["options", "broken.tileplan"]);
    assert.match(out, /\nwall back/);
    assert.equal(exit, 1);
  });

  it("writes to a file, or reads standard input", async () => {
    const words = ["options", "clean.tileplan", "-o", "options.txt"];
    assert.deepEqual(await gaugelath(place, words), { exit: 0, out: "", err: "" });
    const { out } = await gaugelath(place, ["options", "-"], { input: CLEAN });
    assert.equal(readFileSync(place.path("options.txt"), "utf8"), out);
  });

  it("takes one plan, and knows its formats", async () => {
    assert.equal((await gaugelath(place, ["options"])).exit, 2);
    const { exit, err } = await gaugelath(place, [
      ...["options", "clean.tileplan", "--format", "sarif"],
    ]);
    assert.match(err, /the formats are text, json/);
    assert.equal(exit, 2);
  });
});
