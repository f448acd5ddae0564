import assert from "node:assert/strict";
import { mkdirSync, mkdtempSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { diskFiles } from "../../src/server/disk.js";

const NOWHERE = { read: () => Promise.resolve("elsewhere"), find: () => Promise.resolve(["x:y"]) };

describe("files on the disk", () => {
  let folder: string;
  const uriOf = (name = ""): string => pathToFileURL(path.join(folder, name)).toString();
  before(() => {
    folder = mkdtempSync(path.join(tmpdir(), "gaugelath "));
    for (const inner of ["rooms", "node_modules/x", ".git"]) {
      mkdirSync(path.join(folder, inner), { recursive: true });
      writeFileSync(path.join(folder, inner, "b.tileplan"), "bed 1\n");
    }
    writeFileSync(path.join(folder, "a.tileplan"), "bed 2\n");
    writeFileSync(path.join(folder, "a.txt"), "");
  });
  after(() => rmSync(folder, { recursive: true }));

  it("are read, and null where there are none", async () => {
    const files = diskFiles(NOWHERE);
    assert.equal(await files.read(uriOf("a.tileplan")), "bed 2\n");
    assert.equal(await files.read(uriOf("gone.tileplan")), null);
    assert.equal(await files.read(uriOf("rooms")), null);
  });

  it("are found in folders, but not in what tools made", async () => {
    const found = await diskFiles(NOWHERE).find([uriOf()], 10);
    assert.deepEqual([...found].sort(), [uriOf("a.tileplan"), uriOf("rooms/b.tileplan")].sort());
    assert.equal((await diskFiles(NOWHERE).find([uriOf()], 1)).length, 1);
    assert.deepEqual(await diskFiles(NOWHERE).find([uriOf("none")], 9), []);
  });

  it("of other file systems are left to whoever reaches those", async () => {
    assert.equal(await diskFiles(NOWHERE).read("vscode-vfs://github/a"), "elsewhere");
    assert.deepEqual(await diskFiles(NOWHERE).find(["vscode-vfs://github/a"], 9), ["x:y"]);
  });

  it("are none where they are too large for a plan", async () => {
    const large = path.join(folder, "large.txt");
    writeFileSync(large, "");
    truncateSync(large, 16_000_001);
    assert.equal(await diskFiles(NOWHERE).read(uriOf("large.txt")), null);
    truncateSync(large, 3);
    assert.equal((await diskFiles(NOWHERE).read(uriOf("large.txt")))?.length, 3);
  });

  it("count with those of other file systems towards the most", async () => {
    const others = {
      ...NOWHERE,
      find: (folders: readonly string[], most: number) =>
        Promise.resolve([`${folders[0]} ${most}`]),
    };
    const found = await diskFiles(others).find(["memfs:/plans", uriOf("rooms")], 10);
    assert.deepEqual(found, [uriOf("rooms/b.tileplan"), "memfs:/plans 9"]);
  });
});
