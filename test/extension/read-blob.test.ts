import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { readBlob } from "../../src/extension/read-blob.js";

describe("a file of a commit", () => {
  const root = realpathSync(mkdtempSync(path.join(tmpdir(), "gaugelath-blob-")));
  const run = (...args: string[]): string =>
    execFileSync("git", args, { cwd: root, encoding: "utf8" }).trim();
  const write = (name: string, text: string): void => {
    mkdirSync(path.dirname(path.join(root, name)), { recursive: true });
    writeFileSync(path.join(root, name), text);
  };
  const read = (name: string, commit = "HEAD", from = root): Promise<string | null> =>
    readBlob({ git: "git", root: from, commit, file: path.join(from, name) });

  before(() => {
    run("init", "-q", "-b", "main");
    run("config", "user.name", "Tile Setter");
    run("config", "user.email", "setter@example.invalid");
    write("wall.tileplan", "units inch\r\n# é\n");
    write("ванная 1/a b.tileplan", "units mm\n");
    write(".gitattributes", "*.tileplan diff=tileplan\n");
    run("config", "diff.tileplan.textconv", "wc -c");
    run("add", ".");
    run("commit", "-qm", "Begin");
    write("wall.tileplan", "units mm\n");
  });

  after(() => rmSync(root, { recursive: true }));

  it("is read to the byte as it was committed, whatever git would show of it", async () => {
    assert.equal(await read("wall.tileplan"), "units inch\r\n# é\n");
    assert.notEqual(run("show", "--textconv", "HEAD:wall.tileplan"), "units inch\r\n# é");
  });

  it("is found under names with spaces and letters of other alphabets", async () => {
    assert.equal(await read("ванная 1/a b.tileplan"), "units mm\n");
  });

  it("is found by way of a link to the repository", async () => {
    const link = `${root}-link`;
    symlinkSync(root, link);
    try {
      const file = path.join(link, "wall.tileplan");
      const place = { git: "git", root, commit: "HEAD", file };
      assert.match((await readBlob(place))!, /^units inch/);
    } finally {
      rmSync(link);
    }
  });

  it("is nothing where the commit hasn't it, or the file is outside of the repository", async () => {
    assert.equal(await read("other.tileplan"), null);
    assert.equal(await read("wall.tileplan", "0123456789012345678901234567890123456789"), null);
    assert.equal(await read("../wall.tileplan"), null);
  });
});
