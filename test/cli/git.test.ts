import assert from "node:assert/strict";
import { Git } from "../../src/cli/git.js";
import { Failure } from "../../src/cli/failure.js";
import { commit, repository } from "./repository.js";

describe("Git", () => {
  const place = repository((here) => commit(here, "one", { "ä b.tileplan": "units mm\n" }));

  it("finds the top folder and a commit", () => {
    const git = new Git(place.folder);
    assert.equal(git.top(), place.folder);
    assert.match(git.commit("HEAD"), /^[0-9a-f]{40}$/);
  });

  it("lists names as they are", () => {
    const list = new Git(place.folder).list(["ls-files", "-z"]);
    assert.deepEqual(list, ["ä b.tileplan"]);
  });

  it("throws what git says", () => {
    assert.throws(() => new Git(place.folder).read(["cat-file", "blob", "gone"]), Failure);
    assert.throws(() => new Git(place.folder).commit("-x"), /no revision -x/);
    assert.throws(() => new Git("/").top(), /no git repository/);
  });
});
