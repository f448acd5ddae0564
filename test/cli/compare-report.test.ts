import assert from "node:assert/strict";
import { gaugelath } from "./capture.js";
import { CLEAN } from "./plans.js";
import { workplace } from "./workplace.js";

const LOWER = CLEAN.replace("x 8 5/16", "x 7 5/16");

describe("a comparison for a review comment", () => {
  const place = workplace({ "a/one.tileplan": CLEAN, "b/one.tileplan": LOWER });

  it("has a heading, a plan a part, and a caution", async () => {
    const { out } = await gaugelath(place, ["compare", "a", "b", "--format", "markdown"]);
    assert.ok(
      out.startsWith("### 1 plan compared: 1 changed\n\n#### one.tileplan\n\n**What moved**"),
    );
    assert.match(out, /licensed trade\.\n$/);
  });

  it("fits a comment whatever changed: plans in a line, then counted", async () => {
    for (let i = 0; i < 1200; i++) {
      place.write({
        [`c/${"n".repeat(40)}${i}.tileplan`]: CLEAN,
        [`d/${"n".repeat(40)}${i}.tileplan`]: LOWER,
      });
    }
    const { out } = await gaugelath(place, ["compare", "c", "d", "--format", "markdown"]);
    assert.ok(out.length < 65_536, `${out.length} characters`);
    assert.match(out, /\nAnd \d+ more plans\.\n/);
  });

  it("lets no name act", async () => {
    const name = "<img src=x>[a](b)";
    place.write({ [`e/${name}.tileplan`]: CLEAN, [`f/${name}.tileplan`]: LOWER });
    const { out } = await gaugelath(place, ["compare", "e", "f", "--format", "markdown"]);
    assert.ok(out.includes("#### &lt;img src=x&gt;\\[a\\](b).tileplan\n"));
  });

  it("is coloured on a terminal alone", async () => {
    const words = ["compare", "a", "b"];
    assert.ok((await gaugelath(place, words, { colours: true })).out.includes("\u001b[1m"));
    assert.ok(!(await gaugelath(place, words)).out.includes("\u001b"));
  });
});
