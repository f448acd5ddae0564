import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { type Captured, gaugelath } from "./capture.js";
import { manyPlans } from "./many-plans.js";
import { workplace } from "./workplace.js";

// The program of the threads, as it is built.
const worker = fileURLToPath(new URL("../../dist/cli/worker.cjs", import.meta.url));

describe("many plans", () => {
  const place = workplace(manyPlans(70));

  function run(words: readonly string[], threads: boolean): Promise<Captured> {
    return gaugelath(place, words, threads ? { worker } : {});
  }

  for (const format of ["text", "json", "sarif"]) {
    it(`are checked by threads with the same report as by one (${format})`, async () => {
      const words = ["check", "plans", "--format", format];
      const alone = await run(words, false);
      assert.deepEqual(await run(words, true), alone);
      assert.equal(alone.exit, 1);
    });
  }

  it("are compared by threads with the same report as by one", async () => {
    place.write(
      Object.fromEntries(
        Object.entries(manyPlans(70)).map(([name, text]) => [
          name.replace("plans/", "after/"),
          text.replace("x 8 5/16", "x 7 5/16"),
        ]),
      ),
    );
    const words = ["compare", "plans", "after", "--format", "json"];
    const alone = await run(words, false);
    assert.deepEqual(await run(words, true), alone);
    assert.ok(alone.out.length > 10_000);
  });

  it("that can't be read are told, and don't stop the rest", async () => {
    place.write({ "plans/house 1/a.tileplan": Uint8Array.of(0) });
    const both = await Promise.all(
      [true, false].map((threads) => run(["check", "plans"], threads)),
    );
    assert.deepEqual(both[0], both[1]);
    assert.equal(both[0]!.exit, 2);
    assert.match(both[0]!.err, /a\.tileplan: it is not a text/);
    place.remove();
  });
});
