import assert from "node:assert/strict";
import { Failure, systemReason } from "../../src/cli/failure.js";

describe("a failure", () => {
  it("is known in whatever bundle its class stands", () => {
    class Failing extends Error {
      override readonly name = "Failure";
      readonly hint = null;
    }
    const apart: unknown = new Failing("from a bundle of its own");
    assert.ok(apart instanceof Failure);
    assert.ok(new Failure("here") instanceof Failure);
    assert.ok(!(new Error("another") instanceof Failure));
    const nothing: unknown = null;
    assert.ok(!(nothing instanceof Failure));
  });
});

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
