import assert from "node:assert/strict";
import { Git } from "../../src/cli/git.js";
import { RevisionFiles } from "../../src/cli/revision-files.js";
import { commit, repository } from "./repository.js";

describe("RevisionFiles", () => {
  const place = repository((here) => {
    commit(here, "one", { "a.tileplan": "units mm\n", "ü/b c.tileplan": "", "d.tileplan": "ä" });
    commit(here, "two", { "a.tileplan": "units inch\n" });
  });

  function at(revision: string): RevisionFiles {
    const git = new Git(place.folder);
    return new RevisionFiles(git, place.folder, git.commit(revision));
  }

  it("reads a file as it was", () => {
    assert.equal(at("HEAD~1").open(place.path("a.tileplan")), "units mm\n");
    assert.equal(at("HEAD").open(place.path("a.tileplan")), "units inch\n");
  });

  it("reads many at once, also empty ones and ones that aren't there", () => {
    const files = at("HEAD");
    const names = ["a", "ü/b c", "gone", "d"].map((name) => place.path(`${name}.tileplan`));
    files.fetch(names);
    assert.equal(files.open(names[0]!), "units inch\n");
    assert.equal(files.open(names[1]!), "");
    assert.equal(files.open(names[3]!), "ä");
    assert.throws(() => files.open(names[2]!), /gone\.tileplan: it is not in/);
  });

  it("gives what a plan uses, and nothing from outside of the repository", () => {
    const source = at("HEAD~1").sourceOf(place.path("d.tileplan"));
    assert.equal(source.read(place.path("a.tileplan")), "units mm\n");
    assert.equal(source.read(place.path("none.tileplan")), null);
    assert.equal(source.read("/etc/hostname"), null);
  });

  it("tells bytes that are no text", () => {
    const files = at("HEAD");
    files.open(place.path("d.tileplan"));
    assert.deepEqual(files.faultsOf(place.path("d.tileplan")), []);
  });
});
