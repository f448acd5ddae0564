import assert from "node:assert/strict";
import type { Diagnostic } from "../../../src/model/index.js";
import { findingWords } from "../../../src/compare/words/finding-words.js";

describe("the words of findings", () => {
  const place = { line: 0, character: 0 };
  const found: Diagnostic = {
    code: "cut/sliver",
    severity: "warning",
    message: "2 pieces are slivers",
    file: "a.tileplan",
    range: { start: place, end: place },
  };
  const waived: Diagnostic = { ...found, severity: "information", allowed: "behind the door" };

  it("say what came and went", () => {
    assert.equal(
      findingWords({ before: null, after: found }),
      "new: warning cut/sliver: 2 pieces are slivers",
    );
    assert.equal(
      findingWords({ before: null, after: waived }),
      "new, waived: note cut/sliver: 2 pieces are slivers (reason: behind the door)",
    );
    assert.equal(
      findingWords({ before: found, after: null }),
      "gone: warning cut/sliver: 2 pieces are slivers",
    );
  });

  it("say what was waived, with its own weight, and no longer is", () => {
    assert.equal(
      findingWords({ before: found, after: waived }),
      "waived: warning cut/sliver: 2 pieces are slivers (reason: behind the door)",
    );
    assert.equal(
      findingWords({ before: waived, after: found }),
      "no longer waived: warning cut/sliver: 2 pieces are slivers",
    );
  });

  it("say what is still there how it was told before", () => {
    assert.equal(
      findingWords({ before: { ...found, message: "3 pieces are slivers" }, after: found }),
      "still: warning cut/sliver: 2 pieces are slivers (was: 3 pieces are slivers)",
    );
    assert.equal(
      findingWords({ before: { ...found, severity: "information" }, after: found }),
      "still: warning cut/sliver: 2 pieces are slivers (was: note)",
    );
  });
});
