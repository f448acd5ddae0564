import assert from "node:assert/strict";
import { pathOf } from "../../src/server/addresses.js";
import { KnownFiles } from "../../src/server/known-files.js";

const STOCK = "file:///plans/stock.tileplan";
const FILE = pathOf(STOCK);

/** Files of which each read is counted, and answered when the test says so. */
function counting(texts: Record<string, string | null>) {
  const reads: string[] = [];
  const read = (uri: string): Promise<string | null> => {
    reads.push(uri);
    return Promise.resolve(texts[uri] ?? null);
  };
  return {
    reads,
    files: new KnownFiles({ read, find: () => Promise.resolve(Object.keys(texts)) }),
  };
}

describe("known files", () => {
  it("are missing until they are read, and are read once", async () => {
    const { files, reads } = counting({ [STOCK]: "bed 1" });
    assert.equal(files.read(FILE), null);
    assert.ok(files.hasWanted);
    await files.settle();
    assert.equal(files.read(FILE), "bed 1");
    assert.equal(files.hasWanted, false);
    await files.settle();
    assert.deepEqual(reads, [STOCK]);
  });

  it("are read once, too, where they are wanted again while they are being read", async () => {
    const { files, reads } = counting({ [STOCK]: "bed 1" });
    files.read(FILE);
    const first = files.settle();
    files.read(FILE);
    await Promise.all([first, files.settle()]);
    assert.equal(files.read(FILE), "bed 1");
    assert.deepEqual(reads, [STOCK]);
  });

  it("are those of the editor while it has them open", async () => {
    const { files } = counting({ [STOCK]: "bed 1" });
    const document = { file: FILE, uri: STOCK, version: 1, text: "bed 2" };
    files.open(document);
    assert.equal(files.read(FILE), "bed 2");
    files.close(document);
    files.read(FILE);
    await files.settle();
    assert.equal(files.read(FILE), "bed 1");
  });

  it("are read again once they change, also while they are being read", async () => {
    const texts: Record<string, string> = { [STOCK]: "bed 1" };
    const { files, reads } = counting(texts);
    files.read(FILE);
    const settling = files.settle();
    files.changed(STOCK, true);
    texts[STOCK] = "bed 2";
    await settling;
    assert.ok(files.hasWanted);
    await files.settle();
    assert.equal(files.read(FILE), "bed 2");
    assert.equal(reads.length, 2);
  });

  it("are all of the workspace's, once they were looked for", async () => {
    const { files } = counting({ [STOCK]: "bed 1", "file:///plans/b.tileplan": "" });
    files.setFolders(["file:///plans"]);
    assert.deepEqual([...files.files()], []);
    await files.readAll();
    assert.equal([...files.files()].length, 2);
    files.changed(STOCK, false);
    assert.equal([...files.files()].length, 1);
  });

  it("have the outermost folder as their root, or else their own", () => {
    const { files } = counting({});
    files.setFolders(["file:///plans/rooms", "file:///plans"]);
    assert.equal(files.rootOf(pathOf("file:///plans/rooms/a.tileplan")), pathOf("file:///plans"));
    assert.equal(files.rootOf(pathOf("file:///other/a.tileplan")), pathOf("file:///other"));
    assert.equal(files.rootOf("untitled:Untitled-1"), pathOf("file:///plans/rooms"));
  });

  it("are one more once one came", async () => {
    const { files } = counting({ [STOCK]: "bed 1" });
    await files.readAll();
    const added = "file:///plans/c.tileplan";
    files.changed(added, true);
    assert.deepEqual([...files.files()], [FILE, pathOf(added)]);
  });

  it("are all read again once they are forgotten", async () => {
    const texts: Record<string, string> = { [STOCK]: "bed 1" };
    const { files } = counting(texts);
    await files.readAll();
    texts[STOCK] = "bed 2";
    assert.equal(files.read(FILE), "bed 1");
    files.forgetAll();
    files.read(FILE);
    await files.settle();
    assert.equal(files.read(FILE), "bed 2");
  });

  it("have the address by which the editor opened them", () => {
    const { files } = counting({});
    assert.equal(files.uriOf(FILE), STOCK);
    const uri = "FILE:///plans/stock.tileplan";
    files.open({ file: FILE, uri, version: 1, text: "" });
    assert.equal(files.uriOf(FILE), uri);
  });
});
