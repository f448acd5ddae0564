import assert from "node:assert/strict";
import { CONTACT, FLATNESS, PLUMB } from "../../../src/sheets/setting-out/trade.js";
import { inches } from "./plans.js";

describe("the trade's figures on a sheet", () => {
  it("are those of ANSI A108.5 3.3.2 for the mortar's contact", () => {
    // Quoted in ceramictilefoundation.org/blog/insufficient-mortar.
    assert.deepEqual([CONTACT.dry, CONTACT.wet], ["80 %", "95 %"]);
    assert.match(CONTACT.source, /ANSI A108\.5 3\.3\.2/);
  });

  it("are stricter on flatness and plumb from 15 in of tile on", () => {
    // Quoted in tileletter.com/to-shim-or-not-to-shim, and in ctasc.com's workmanship answer.
    assert.equal(FLATNESS.longFrom, inches(15));
    assert.match(FLATNESS.short, /^1\/4 in in 10 ft/);
    assert.match(FLATNESS.long, /^1\/8 in in 10 ft/);
    assert.deepEqual([PLUMB.short, PLUMB.long], ["1/4 in in 10 ft", "1/8 in in 10 ft"]);
  });
});
