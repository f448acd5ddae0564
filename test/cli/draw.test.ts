import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { gaugelath } from "./capture.js";
import { BROKEN, CLEAN } from "./plans.js";
import { workplace } from "./workplace.js";

describe("gaugelath draw", () => {
  const place = workplace({
    "clean.tileplan": CLEAN,
    "broken.tileplan": BROKEN,
    "odd-name.svg": CLEAN,
  });

  it("writes the picture", async () => {
    const answer = await gaugelath(place, ["draw", "clean.tileplan", "-o", "clean.svg"]);
    assert.deepEqual(answer, { exit: 0, out: "", err: "" });
    const picture = readFileSync(place.path("clean.svg"), "utf8");
    assert.match(picture, /^<svg [\s\S]*<\/svg>\n$/);
    assert.ok(picture.includes("Test bench"));
  });

  it("writes the same bytes to standard output for -o -, and each time", async () => {
    const words = ["draw", "clean.tileplan", "-o", "-"];
    const [first, second] = [await gaugelath(place, words), await gaugelath(place, words)];
    assert.equal(first.out, second.out);
    assert.equal(first.out, readFileSync(place.path("clean.svg"), "utf8"));
  });

  it("draws what could be understood, tells the rest on standard error, and ends with 1", async () => {
    const { exit, err } = await gaugelath(place, ["draw", "broken.tileplan", "-o", "broken.svg"]);
    assert.match(err, /^broken\.tileplan:11:3: error: /);
    assert.equal(exit, 1);
    assert.match(readFileSync(place.path("broken.svg"), "utf8"), /<\/svg>\n$/);
  });

  it("does not write over the plan itself", async () => {
    const words = ["draw", "odd-name.svg", "-o", "./odd-name.svg"];
    const { exit, err } = await gaugelath(place, words);
    assert.equal(exit, 2);
    assert.match(err, /^gaugelath: \.\/odd-name\.svg is the plan itself\n/);
    assert.equal(readFileSync(place.path("odd-name.svg"), "utf8"), CLEAN);
  });

  it("writes no SVG under another format's name, and says what does write it", async () => {
    for (const name of ["a.png", "a.PDF", "clean.tileplan"]) {
      const before = readdirSync(place.folder);
      const { exit, out, err } = await gaugelath(place, ["draw", "clean.tileplan", "-o", name]);
      assert.deepEqual([exit, out], [2, ""]);
      assert.match(err, /^gaugelath: \S+: a picture is drawn as \.svg, not as \.\w+\n/);
      assert.match(err, /gaugelath sheet writes \.pdf, \.png and \.dxf/);
      assert.deepEqual(readdirSync(place.folder), before);
    }
    assert.equal(readFileSync(place.path("clean.tileplan"), "utf8"), CLEAN);
    const plain = await gaugelath(place, ["draw", "clean.tileplan", "-o", "picture"]);
    assert.deepEqual(plain, { exit: 0, out: "", err: "" });
  });

  it("leaves nothing behind where it can't write", async () => {
    const before = readdirSync(place.folder);
    const { exit, err } = await gaugelath(place, ["draw", "clean.tileplan", "-o", "gone/a.svg"]);
    assert.equal(exit, 2);
    assert.match(err, /^gaugelath: gone\/a\.svg could not be written: /);
    assert.deepEqual(readdirSync(place.folder), before);
  });
});
