import assert from "node:assert/strict";
import { writeFileSync } from "node:fs";
import { revisionOf } from "../../src/cli/sheet-revision.js";
import { slashed } from "../../src/cli/paths.js";
import { CLEAN } from "./plans.js";
import { commit, git, repository } from "./repository.js";
import { workplace } from "./workplace.js";

describe("the revision that git knows", () => {
  const place = repository((at) =>
    commit(at, "First", { "a.tileplan": CLEAN, "stock.tileplan": "", "b.tileplan": CLEAN }),
  );
  const plan = (): string => slashed(place.path("a.tileplan"));
  const head = (): string => git(place.folder, "rev-parse", "--short", "HEAD").trim();

  it("is the commit while the plan stands as it was committed", () => {
    assert.equal(revisionOf(plan(), []), head());
  });

  it("does not care for other plans", () => {
    writeFileSync(place.path("b.tileplan"), "");
    assert.equal(revisionOf(plan(), []), head());
  });

  it("says so when what the plan uses was changed", () => {
    writeFileSync(place.path("stock.tileplan"), "# new\n");
    assert.equal(
      revisionOf(plan(), [slashed(place.path("stock.tileplan"))]),
      `${head()}, changed since`,
    );
  });

  it("says so when the plan was changed", () => {
    writeFileSync(place.path("a.tileplan"), `${CLEAN}\n`);
    assert.equal(revisionOf(plan(), []), `${head()}, changed since`);
  });

  describe("elsewhere", () => {
    const outside = workplace({ "a.tileplan": CLEAN });
    const unborn = repository((at) => at.write({ "a.tileplan": CLEAN }));

    it("is none outside of a repository, and before its first commit", () => {
      assert.equal(revisionOf(slashed(outside.path("a.tileplan")), []), null);
      assert.equal(revisionOf(slashed(unborn.path("a.tileplan")), []), null);
    });
  });
});
