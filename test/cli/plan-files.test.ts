import assert from "node:assert/strict";
import { mkdirSync, symlinkSync } from "node:fs";
import { PlanFiles } from "../../src/cli/plan-files.js";
import { workplace } from "./workplace.js";

describe("PlanFiles", () => {
  const place = workplace({
    "job/walls/a.tileplan": "bed 1",
    "job/stock.tileplan": "units mm",
    "outside.tileplan": "units cm",
    "loose/b.tileplan": "",
  });

  function files(root: string | null = null): PlanFiles {
    return new PlanFiles(place.path("job"), root);
  }

  it("reads a plan, and what it uses, once", () => {
    const plans = files();
    const plan = place.path("job/walls/a.tileplan");
    assert.equal(plans.open(plan), "bed 1");
    const source = plans.sourceOf(plan);
    assert.equal(source.file, plan);
    assert.equal(source.read(place.path("job/stock.tileplan")), "units mm");
    assert.deepEqual([...plans.used], [place.path("job/stock.tileplan")]);
    assert.equal(plans.textOf(place.path("job/stock.tileplan")), "units mm");
  });

  it("gives null for a used file that isn't there", () => {
    const plans = files();
    const { read } = plans.sourceOf(place.path("job/walls/a.tileplan"));
    assert.equal(read(place.path("job/gone.tileplan")), null);
    assert.equal(read(place.path("job")), null);
    assert.equal(plans.used.size, 0);
  });

  it("lets no link lead out of the root", () => {
    symlinkSync(place.path("outside.tileplan"), place.path("job/link.tileplan"));
    const { read } = files().sourceOf(place.path("job/walls/a.tileplan"));
    assert.equal(read(place.path("job/link.tileplan")), null);
  });

  it("takes as the root the folder named, else git's, else the working folder, else the plan's", () => {
    const plan = place.path("job/walls/a.tileplan");
    assert.equal(files().sourceOf(plan).root, place.path("job"));
    assert.equal(files("walls").sourceOf(plan).root, place.path("job/walls"));
    const loose = place.path("loose/b.tileplan");
    assert.equal(files().sourceOf(loose).root, place.path("loose"));
    mkdirSync(place.path("job/walls/.git"));
    assert.equal(files().sourceOf(plan).root, place.path("job/walls"));
  });

  it("says which file can't be read and why", () => {
    assert.throws(() => files().open(place.path("job/gone.tileplan")), {
      message: "gone.tileplan: there is no such file or folder",
    });
    assert.throws(() => files().open(place.path("job/walls")), {
      message: "walls: it is a folder",
    });
    assert.throws(() => files("nowhere"), { message: "--root nowhere: there is no such folder" });
  });
});
