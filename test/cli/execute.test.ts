import assert from "node:assert/strict";
import { gaugelath } from "./capture.js";
import { workplace } from "./workplace.js";

describe("gaugelath", () => {
  const place = workplace();

  it("prints its help and version on standard output", async () => {
    const help = await gaugelath(place, ["--help"]);
    assert.match(help.out, /^Gaugelath lays out tiled walls/);
    assert.deepEqual([help.exit, help.err], [0, ""]);
    const version = await gaugelath(place, ["--version"]);
    assert.match(version.out, /^gaugelath \d+\.\d+\.\d+\n$/);
    assert.equal(version.exit, 0);
  });

  it("says on standard error what it can't understand, with a hint, and ends with 2", async () => {
    assert.deepEqual(await gaugelath(place, ["chekc", "a.tileplan"]), {
      exit: 2,
      out: "",
      err: `gaugelath: unknown command "chekc"\n   hint did you mean check?\n`,
    });
  });
});
