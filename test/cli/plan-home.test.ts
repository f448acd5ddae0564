import assert from "node:assert/strict";
import { homeOf } from "../../src/cli/plan-home.js";
import { PlanFiles } from "../../src/cli/plan-files.js";
import { CLEAN } from "./plans.js";
import { commit, repository } from "./repository.js";
import { workplace } from "./workplace.js";

describe("homeOf", () => {
  const place = repository((here) => {
    commit(here, "one", { "walls/bath.tileplan": CLEAN, "walls/stock.tileplan": "units inch\n" });
    commit(here, "two", { "walls/stock.tileplan": "units mm\n" });
  });
  const elsewhere = workplace({
    "bath.tileplan": CLEAN,
    "x1_bath.tileplan": "units inch\n# new\n",
  });

  function home(file: string, folder = place.folder) {
    return homeOf(file, folder, new PlanFiles(folder, null));
  }

  it("finds the path and the commit of a text that git copied out", () => {
    const source = home(elsewhere.path("bath.tileplan"));
    assert.equal(source?.file, place.path("walls/bath.tileplan"));
    assert.equal(source.read(place.path("walls/stock.tileplan")), "units inch\n");
  });

  it("takes the one plan of that name for the home of a text without a commit", () => {
    const source = home(elsewhere.path("x1_bath.tileplan"));
    assert.equal(source?.file, place.path("walls/bath.tileplan"));
    assert.equal(source.read(place.path("walls/stock.tileplan")), "units mm\n");
  });

  it("is none for a plan of the work tree, nor without a repository", () => {
    assert.equal(home(place.path("walls/bath.tileplan")), null);
    assert.equal(home(elsewhere.path("bath.tileplan"), elsewhere.folder), null);
  });
});
