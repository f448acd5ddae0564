import assert from "node:assert/strict";
import { pairPlaces } from "../../src/cli/pair-places.js";
import { workplace } from "./workplace.js";

describe("pairPlaces", () => {
  const place = workplace({
    "a/x.tileplan": "",
    "a/deep/y.tileplan": "",
    "b/x.tileplan": "",
    "b/z.tileplan": "",
    "empty/readme.md": "",
  });

  it("pairs two files, whatever they are called", () => {
    const [pair] = pairPlaces(["a/x.tileplan", "b/z.tileplan"], place.folder);
    assert.equal(pair?.name, "b/z.tileplan");
    assert.equal(pair.before, place.path("a/x.tileplan"));
  });

  it("pairs the plans of two folders by their paths in them", () => {
    const pairs = pairPlaces(["a", "b"], place.folder);
    assert.deepEqual(
      pairs.map(({ name, before, after }) => [name, before !== null, after !== null]),
      [
        ["deep/y.tileplan", true, false],
        ["x.tileplan", true, true],
        ["z.tileplan", false, true],
      ],
    );
  });

  it("takes a folder without plans for an empty one", () => {
    assert.equal(pairPlaces(["empty", "b"], place.folder).length, 2);
  });

  it("refuses a file beside a folder, and what isn't there", () => {
    assert.throws(
      () => pairPlaces(["a", "b/x.tileplan"], place.folder),
      /one of the two is a folder/,
    );
    assert.throws(() => pairPlaces(["a", "c"], place.folder), /c: there is no such file or folder/);
  });
});
