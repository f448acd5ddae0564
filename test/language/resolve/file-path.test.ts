import assert from "node:assert/strict";
import { isAbsolute, isInside, pathFrom } from "../../../src/language/resolve/file-path.js";

describe("the path of a used file", () => {
  const paths: [string, string, string, string][] = [
    ["a/b.tileplan", "", "c.tileplan", "a/c.tileplan"],
    ["a/b.tileplan", "", "../c.tileplan", "c.tileplan"],
    ["a/b.tileplan", "", "../../c.tileplan", "../c.tileplan"],
    ["/w/a/b.tileplan", "/w", "./x/../c.tileplan", "/w/a/c.tileplan"],
    ["/w/b.tileplan", "/w", "../../../c.tileplan", "/c.tileplan"],
    ["-", "/w", "c.tileplan", "/w/c.tileplan"],
    ["C:/w/b.tileplan", "C:/w", "x/c.tileplan", "C:/w/x/c.tileplan"],
  ];
  for (const [file, root, written, wanted] of paths) {
    it(`${written} from ${file} is ${wanted}`, () =>
      assert.equal(pathFrom(file, root, written), wanted));
  }
});

describe("a folder", () => {
  it("holds what is in it, at any depth", () => {
    assert.ok(isInside("/w/a/c", "/w"));
    assert.ok(isInside("/w/c", "/w/"));
    assert.ok(isInside("a/c", ""));
    assert.ok(isInside("a/c", "."));
    assert.ok(isInside("/c", "/"));
  });

  it("doesn't hold its neighbours, nor what is above it", () => {
    assert.ok(!isInside("/wall/c", "/w"));
    assert.ok(!isInside("/c", "/w"));
    assert.ok(!isInside("../c", ""));
    assert.ok(!isInside("/c", "."));
  });
});

describe("an absolute path", () => {
  it("starts at the disk, a drive or a server", () => {
    for (const path of ["/c", "C:/c", "file:///c", "http://c"]) assert.ok(isAbsolute(path), path);
    for (const path of ["c", "./c", "../c", "a/b:c"]) assert.ok(!isAbsolute(path), path);
  });
});
