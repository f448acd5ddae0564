import assert from "node:assert/strict";
import { renameSync } from "node:fs";
import { Git } from "../../src/cli/git.js";
import { pairRevisions } from "../../src/cli/pair-revisions.js";
import { CLEAN } from "./plans.js";
import { commit, repository } from "./repository.js";

describe("pairRevisions", () => {
  const place = repository((here) => {
    commit(here, "one", { "a/one.tileplan": CLEAN, "a/two.tileplan": "units mm\n" });
    renameSync(here.path("a/one.tileplan"), here.path("here.tileplan"));
    commit(here, "moved", { "a/three.tileplan": "units inch\n" });
  });

  function pairs(places: readonly string[], from = "HEAD~1", to: string | null = "HEAD") {
    const git = new Git(place.folder);
    const commitOf = (name: string | null) => (name === null ? null : git.commit(name));
    const revisions = { git, top: place.folder, from: commitOf(from)!, to: commitOf(to) };
    const short = (file: string | null) => file?.slice(place.folder.length + 1) ?? null;
    return pairRevisions(places, revisions, place.folder).map(({ before, after }) => [
      short(before),
      short(after),
    ]);
  }

  it("follows a renamed plan, from either of its names", () => {
    assert.deepEqual(pairs(["here.tileplan"]), [["a/one.tileplan", "here.tileplan"]]);
    assert.deepEqual(pairs(["a/one.tileplan"]), [["a/one.tileplan", "here.tileplan"]]);
  });

  it("finds every plan of a folder once, new and gone ones with it", () => {
    assert.deepEqual(pairs(["."]), [
      [null, "a/three.tileplan"],
      ["a/two.tileplan", "a/two.tileplan"],
      ["a/one.tileplan", "here.tileplan"],
    ]);
    assert.equal(pairs([".", "a", "here.tileplan"]).length, 3);
  });

  it("takes the files as they are where no revision is named for after", () => {
    place.write({ "a/four.tileplan": "" });
    assert.ok(pairs(["a"], "HEAD", null).some(([, after]) => after === "a/four.tileplan"));
  });

  it("says what it doesn't find", () => {
    assert.throws(() => pairs(["five.tileplan"]), /no plan of that name in either revision/);
  });
});
