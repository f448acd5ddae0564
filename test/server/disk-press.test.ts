import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { diskPress } from "../../src/server/disk-press.js";

describe("what prints, from the disk", () => {
  it("is the built bundle and the print font", () => {
    const { print, fonts } = diskPress(fileURLToPath(new URL("../../dist", import.meta.url)));
    assert.ok(new print.Faces(fonts).widthOf("tile", 10) > 0);
  });

  it("throws where nothing is built", () => {
    assert.throws(() => diskPress("/nowhere"), /print\.js/);
  });
});
