import assert from "node:assert/strict";
import { gaugelath } from "./capture.js";
import { CLEAN } from "./plans.js";
import { workplace } from "./workplace.js";

describe("standard input", () => {
  const place = workplace({
    "stock.tileplan": CLEAN.slice(CLEAN.indexOf("tile"), CLEAN.indexOf("wall")),
  });

  it("is a plan of the working folder, and may use files there", async () => {
    const input = CLEAN.replace(/tile field[^}]*}\n/, `use "stock.tileplan"\n`);
    const { out } = await gaugelath(place, ["check", "-"], { input });
    assert.match(out, /^1 plan checked: no errors/, out);
  });

  it("ends with 2 where it is no text", async () => {
    const { exit, err } = await gaugelath(place, ["check", "-"], { input: Buffer.of(1, 0, 2) });
    assert.equal(err, "gaugelath: standard input: it is not a text (it holds zero bytes)\n");
    assert.equal(exit, 2);
  });
});
