import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { gaugelath } from "./capture.js";
import { manyPlans } from "./many-plans.js";
import { workplace } from "./workplace.js";

describe("gaugelath merge", () => {
  const place = workplace(manyPlans(20));

  async function shards(words: readonly string[], of: number): Promise<string[]> {
    const names: string[] = [];
    for (let part = 1; part <= of; part++) {
      const { out } = await gaugelath(place, [...words, "--shard", `${part}/${of}`]);
      names.push(`${part}.report`);
      place.write({ [names.at(-1)!]: out });
    }
    return names;
  }

  for (const format of ["json", "sarif"]) {
    it(`makes of all shards' reports that of the whole (${format})`, async () => {
      const words = ["check", "plans", "--format", format];
      const whole = await gaugelath(place, words);
      const merged = await gaugelath(place, ["merge", ...(await shards(words, 3))]);
      assert.deepEqual([merged.exit, merged.err], [0, ""]);
      assert.equal(merged.out, whole.out);
      assert.ok(whole.out.includes("thicknes"));
    });
  }

  it("merges comparisons", async () => {
    place.write(
      Object.fromEntries(
        Object.entries(manyPlans(20)).map(([name, text]) => [
          name.replace("plans/", "after/"),
          text.replace("x 8 5/16", "x 7 5/16"),
        ]),
      ),
    );
    const words = ["compare", "plans", "after", "--format", "json"];
    const whole = await gaugelath(place, words);
    const merged = await gaugelath(place, ["merge", ...(await shards(words, 4)), "-o", "all.json"]);
    assert.deepEqual(merged, { exit: 0, out: "", err: "" });
    assert.equal(readFileSync(place.path("all.json"), "utf8"), whole.out);
  });

  it("says what it can't read", async () => {
    const said = async (...files: readonly string[]) => {
      const { exit, err } = await gaugelath(place, ["merge", ...files]);
      assert.equal(exit, 2);
      return err;
    };
    assert.match(await said("gone.json"), /gone\.json: there is no such file/);
    place.write({ "text.json": "no", "other.json": "[1]" });
    assert.match(await said("text.json"), /text\.json is no JSON/);
    assert.match(await said("other.json"), /other\.json is no report of this program/);
  });
});
