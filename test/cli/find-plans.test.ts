import assert from "node:assert/strict";
import { symlinkSync } from "node:fs";
import { findPlans } from "../../src/cli/find-plans.js";
import { workplace } from "./workplace.js";

describe("findPlans", () => {
  const place = workplace({
    "walls/b.tileplan": "",
    "walls/a.tileplan": "",
    "walls/deep/c.tileplan": "",
    "walls/notes.txt": "",
    "walls/.hidden/d.tileplan": "",
    "walls/node_modules/x/e.tileplan": "",
    "empty/notes.txt": "",
  });

  function found(...places: string[]): { files: string[]; failures: string[] } {
    const { files, failures } = findPlans(places, place.folder);
    return {
      files: files.map((file) => file.slice(place.folder.length + 1)),
      failures: failures.map((failure) => failure.message),
    };
  }

  it("searches a folder by name, without hidden folders and installed packages", () => {
    assert.deepEqual(found("walls").files, [
      "walls/a.tileplan",
      "walls/b.tileplan",
      "walls/deep/c.tileplan",
    ]);
  });

  it("takes a named file whatever it is called", () => {
    assert.deepEqual(found("walls/notes.txt").files, ["walls/notes.txt"]);
  });

  it("takes each file once, in the order given", () => {
    const { files } = found("walls/b.tileplan", "walls/deep", "walls");
    assert.deepEqual(files, ["walls/b.tileplan", "walls/deep/c.tileplan", "walls/a.tileplan"]);
  });

  it("does not follow a link to a folder, so that no search is endless", () => {
    symlinkSync(place.path("walls"), place.path("walls/deep/round"));
    assert.equal(found("walls").files.length, 3);
  });

  it("says what is not there and goes on", () => {
    assert.deepEqual(found("gone.tileplan", "walls/a.tileplan", "empty"), {
      files: ["walls/a.tileplan"],
      failures: [
        "gone.tileplan: there is no such file or folder",
        "empty: there is no .tileplan file in this folder or below it",
      ],
    });
  });
});
