import assert from "node:assert/strict";
import { CONTACT, PLUMB } from "../../../src/sheets/setting-out/trade.js";

describe("the trade's figures on a sheet", () => {
  it("are those of ANSI A108.5 3.3.2 for the mortar's contact", () => {
    // Quoted in ceramictilefoundation.org/blog/insufficient-mortar.
    assert.deepEqual([CONTACT.dry, CONTACT.wet], ["80 %", "95 %"]);
    assert.match(CONTACT.source, /ANSI A108\.5 3\.3\.2/);
  });

  it("are stricter on plumb for tile that wants a flatter wall", () => {
    // Quoted in ctasc.com's workmanship answer.
    assert.deepEqual([PLUMB.short, PLUMB.long], ["1/4 in in 10 ft", "1/8 in in 10 ft"]);
  });
});
