import assert from "node:assert/strict";
import { inParts } from "../../src/cli/host.js";

describe("inParts", () => {
  it("gives the same text in parts of a useful size", () => {
    const chunks = Array.from({ length: 10_000 }, (_, i) => `${i},`.repeat(4));
    const parts = [...inParts(chunks)];
    assert.equal(parts.join(""), chunks.join(""));
    assert.ok(parts.length > 1 && parts.length < 10, `${parts.length} parts`);
  });

  it("gives nothing of nothing", () => {
    assert.deepEqual([...inParts(["", ""])], []);
  });
});
