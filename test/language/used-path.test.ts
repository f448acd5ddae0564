import assert from "node:assert/strict";
import { usedPath } from "../../src/language/index.js";

describe("the path of a used file", () => {
  const root = { root: "/plans" };

  it("is followed from the file that names it", () => {
    assert.equal(
      usedPath(root, "/plans/rooms/a.tileplan", "b.tileplan"),
      "/plans/rooms/b.tileplan",
    );
    assert.equal(usedPath(root, "/plans/rooms/a.tileplan", "../b.tileplan"), "/plans/b.tileplan");
  });

  it("is none where it leaves the root or starts at a disk's", () => {
    for (const written of [
      "../../b.tileplan",
      "/etc/b.tileplan",
      "c:/b.tileplan",
      "a\\b.tileplan",
    ]) {
      assert.equal(usedPath(root, "/plans/rooms/a.tileplan", written), null, written);
    }
  });
});
