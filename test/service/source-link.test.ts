import assert from "node:assert/strict";
import { RULES } from "../../src/rules/index.js";
import { sourceLink } from "../../src/service/source-link.js";

describe("the address of a source", () => {
  it("is found behind its name and before what follows it", () => {
    assert.equal(
      sourceLink("TileLetter, tileletter.com/what-is-minimum-grout-joint; and others"),
      "https://tileletter.com/what-is-minimum-grout-joint",
    );
    assert.equal(sourceLink("(www.example.co.uk/a/b.pdf)"), "https://www.example.co.uk/a/b.pdf");
  });

  it("is none where a source names none", () => {
    for (const source of ["common practice", "ANSI A108.02", "example.com", "a.b/c", ""]) {
      assert.equal(sourceLink(source), null, source);
    }
  });

  it("is whole for every rule that names one", () => {
    const linked = RULES.filter(({ source }) => /\.(com|org|net)\//.test(source));
    assert.ok(linked.length > 0);
    for (const { source } of linked) {
      const link = sourceLink(source);
      assert.ok(link, source);
      assert.ok(source.includes(link.slice("https://".length)), source);
      assert.ok(new URL(link).pathname.length > 1, link);
    }
  });
});
