import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { version } from "../../src/cli/version.js";

describe("the version", () => {
  it("is the package's", () => {
    const text = readFileSync(new URL("../../package.json", import.meta.url), "utf8");
    assert.equal(version, (JSON.parse(text) as { version: string }).version);
  });
});
