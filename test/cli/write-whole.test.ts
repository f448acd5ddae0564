import assert from "node:assert/strict";
import {
  chmodSync,
  existsSync,
  lstatSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
} from "node:fs";
import { writeWhole } from "../../src/cli/write-whole.js";
import { workplace } from "./workplace.js";

describe("writeWhole", () => {
  const place = workplace({ "old.svg": "old", "folder/x": "", "target.svg": "t" });

  function write(name: string, chunks: Iterable<string>): void {
    writeWhole(place.path(name), name, chunks);
  }

  function read(name: string): string {
    return readFileSync(place.path(name), "utf8");
  }

  it("writes a new file and over an old one", () => {
    write("new.svg", ["a", "é"]);
    assert.equal(read("new.svg"), "aé");
    write("new.svg", ["b"]);
    assert.equal(read("new.svg"), "b");
  });

  it("leaves the old file and nothing else when the text can't be made", () => {
    const before = readdirSync(place.folder);
    function* broken(): Generator<string> {
      yield "x".repeat(200_000);
      throw new Error("it broke");
    }
    assert.throws(() => write("old.svg", broken()), {
      message: "old.svg could not be written: it broke",
    });
    assert.equal(read("old.svg"), "old");
    assert.deepEqual(readdirSync(place.folder), before);
  });

  it("says why it can't write", () => {
    assert.throws(() => write("gone/a.svg", []), {
      message: "gone/a.svg could not be written: there is no such file or folder",
    });
    assert.throws(() => write("folder", []), {
      message: "folder could not be written: it is a folder",
    });
    assert.throws(() => write("old.svg/a.svg", []), /a part of its path is no folder/);
  });

  it("keeps the old file's permissions, and a link a link", () => {
    chmodSync(place.path("old.svg"), 0o640);
    write("old.svg", ["new"]);
    assert.equal(statSync(place.path("old.svg")).mode & 0o777, 0o640);
    symlinkSync(place.path("target.svg"), place.path("link.svg"));
    write("link.svg", ["through"]);
    assert.equal(read("target.svg"), "through");
    assert.ok(lstatSync(place.path("link.svg")).isSymbolicLink());
  });

  it("writes to a device instead of replacing it", function () {
    if (!existsSync("/dev/null")) this.skip();
    writeWhole("/dev/null", "/dev/null", ["a"]);
    assert.ok(statSync("/dev/null").isCharacterDevice());
  });
});
