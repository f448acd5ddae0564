import assert from "node:assert/strict";
import { writeFileSync } from "node:fs";
import { makeFolder, partName, placeOf, SHEET_FORMATS } from "../../src/cli/sheet-places.js";
import { workplace } from "./workplace.js";

describe("where a sheet goes", () => {
  const place = workplace({ "old/a.txt": "" });

  it("is a file of the format that its ending names, in capitals too", () => {
    for (const format of SHEET_FORMATS) {
      assert.deepEqual(placeOf(`bath.${format}`, null, place.folder), { kind: "file", format });
    }
    assert.deepEqual(placeOf("BATH.PDF", null, place.folder), { kind: "file", format: "pdf" });
  });

  it("is a folder where there is one, where the name ends in a slash or has no ending", () => {
    for (const output of ["old", "new/", "new", "new.d/"]) {
      assert.deepEqual(placeOf(output, null, place.folder), { kind: "folder" }, output);
    }
  });

  it("takes the stated format before the ending", () => {
    assert.deepEqual(placeOf("bath.txt", "csv", place.folder), { kind: "file", format: "csv" });
    assert.deepEqual(placeOf("-", "md", place.folder), { kind: "file", format: "md" });
  });

  it("refuses an ending that names no format", () => {
    assert.throws(() => placeOf("bath.doc", null, place.folder), /no sheet is written as \.doc/);
  });

  it("names parts behind the file's own name", () => {
    assert.equal(partName("out/bath.svg", "wall-back", false), "out/bath-wall-back.svg");
    assert.equal(partName("out/bath.svg", "wall-back", true), "out/bath.svg");
    assert.equal(partName("bath.pdf", "", false), "bath.pdf");
  });

  it("makes folders, and says so where it can't", () => {
    makeFolder(place.path("a/b"), "a/b");
    writeFileSync(place.path("a/b/c"), "");
    assert.throws(() => makeFolder(place.path("a/b/c/d"), "d"), /^Failure: d can't be a folder: /);
  });
});
