import assert from "node:assert/strict";
import { DEFAULT_SETTINGS } from "../../src/server/protocol.js";
import { readSettings } from "../../src/server/settings.js";

describe("settings from a client", () => {
  it("are taken as far as they are what they should be", () => {
    const told = { units: "mm", hints: false, debounce: 0 };
    assert.deepEqual(readSettings(told), told);
    for (const odd of [null, undefined, 3, "x", [], { units: "cubit", hints: 1, debounce: -1 }]) {
      assert.deepEqual(readSettings(odd), DEFAULT_SETTINGS);
    }
    assert.equal(readSettings({ debounce: 1e9 }).debounce, 2000);
    assert.equal(readSettings({ debounce: NaN }).debounce, DEFAULT_SETTINGS.debounce);
  });
});
