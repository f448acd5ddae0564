import assert from "node:assert/strict";
import { pathOf, uriOf } from "../../src/server/addresses.js";

describe("addresses as paths", () => {
  it("come back as they were, on every file system", () => {
    for (const uri of [
      "file:///plans/back%20wall.tileplan",
      "file:///c%3A/plans/b%C3%A4d.tileplan",
      "file://server/share/a.tileplan",
      "vscode-remote://wsl%2Bubuntu/home/a.tileplan",
      "vscode-vfs://github/owner/repo/a.tileplan",
      "untitled:Untitled-1",
    ]) {
      assert.equal(uriOf(pathOf(uri)), uri);
    }
  });

  it("are one path for one file, however it is written", () => {
    assert.equal(pathOf("file:///c:/a.tileplan"), pathOf("file:///c%3A/a.tileplan"));
    assert.equal(pathOf("file:///a%20b.tileplan"), "file:/-/a b.tileplan");
  });
});
