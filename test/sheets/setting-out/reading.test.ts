import assert from "node:assert/strict";
import { bothReadings, otherReading, otherUnit } from "../../../src/sheets/setting-out/reading.js";
import { inches } from "./plans.js";

describe("bothReadings", () => {
  it("reads a length in the plan's units and in the other system", () => {
    assert.equal(bothReadings(inches(2.625), "inch"), "2 5/8 in (66.7 mm)");
    assert.equal(bothReadings(inches(14.5), "foot"), `1' 2 1/2" (368.3 mm)`);
    assert.equal(bothReadings(298_000_000, "mm"), "298 mm (11 23/32+ in)");
  });

  it("reads it in the other system alone", () => {
    assert.equal(otherReading(inches(2.625), "inch"), "66.7 mm");
    assert.equal(otherReading(298_000_000, "mm"), "11 23/32+ in");
    assert.deepEqual([otherUnit("foot"), otherUnit("cm")], ["mm", "inch"]);
  });
});
