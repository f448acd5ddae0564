import assert from "node:assert/strict";
import { serve } from "../../src/cli/serve.js";
import { gaugelath } from "./capture.js";
import { workplace } from "./workplace.js";

describe("gaugelath serve", () => {
  const place = workplace({
    "server.cjs": "globalThis.gaugelathServed = true;",
  });

  it("starts the server's program, which ends the process itself", async () => {
    const served = serve(place.path("server.cjs"));
    const first = await Promise.race([served, Promise.resolve("still serving")]);
    assert.equal(first, "still serving");
    assert.equal((globalThis as { gaugelathServed?: boolean }).gaugelathServed, true);
  });

  it("says what is missing where nothing was built", () => {
    assert.throws(() => serve(place.path("none.cjs")), /language server is missing/);
  });

  it("wants --stdio, and nothing else", async () => {
    for (const words of [["serve"], ["serve", "--stdio", "a.tileplan"]]) {
      const { exit, err } = await gaugelath(place, words);
      assert.equal(exit, 2);
      assert.match(err, /--stdio/);
    }
  });
});
