import assert from "node:assert/strict";
import { systemReason } from "../../src/cli/failure.js";

describe("systemReason", () => {
  it("says in words what the system says in codes", () => {
    const error = Object.assign(new Error("ENOENT: no such file"), { code: "ENOENT" });
    assert.equal(systemReason(error), "there is no such file or folder");
  });

  it("falls back on the system's own words", () => {
    const error = Object.assign(new Error("EXDEV: cross-device link"), { code: "EXDEV" });
    assert.equal(systemReason(error), "EXDEV: cross-device link");
    assert.equal(systemReason("odd"), "odd");
  });
});
