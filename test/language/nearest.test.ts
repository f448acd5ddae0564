import assert from "node:assert/strict";
import { didYouMean, nearest } from "../../src/language/index.js";
import { costOf } from "./telling.js";

describe("the nearest name", () => {
  const names = ["field", "sill", "head", "plumbing", "x"];

  it("is one slip away: a letter missing, extra, wrong, or two swapped", () => {
    assert.equal(nearest("feld", names), "field");
    assert.equal(nearest("fieldd", names), "field");
    assert.equal(nearest("fiald", names), "field");
    assert.equal(nearest("feild", names), "field");
    assert.equal(nearest("Sill", names), "sill");
  });

  it("is two slips away in a word of five letters or more, no further", () => {
    assert.equal(nearest("plumbnig", names), "plumbing");
    assert.equal(nearest("plmbin", names), "plumbing");
    assert.equal(nearest("plbin", names), null);
    assert.equal(nearest("hd", names), null);
  });

  it("is none for a word of one letter", () => {
    assert.equal(nearest("y", names), null);
  });

  it("is the closest of several", () => {
    assert.equal(nearest("niches", ["nichest", "niche", "nicheing"]), "nichest");
    assert.equal(nearest("sile", ["sill", "side", "sole"]), "sill");
  });

  it("reads as a question behind a message", () => {
    assert.equal(didYouMean("feild", names), "; did you mean `field`?");
    assert.equal(didYouMean("lath", names), "");
  });

  it("takes little time over many and long names", () => {
    const many = Array.from({ length: 100_000 }, (_, i) => `name-${"x".repeat(30)}${i}`);
    const cost = costOf(() => {
      nearest("n".repeat(30), many);
      nearest("n".repeat(100_000), [`${"n".repeat(99_999)}m`]);
    });
    assert.ok(cost < 500);
  });
});
