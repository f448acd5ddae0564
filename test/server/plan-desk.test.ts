import assert from "node:assert/strict";
import type { OpenDocuments } from "../../src/server/open-documents.js";
import { pathOf } from "../../src/server/addresses.js";
import { PlanDesk } from "../../src/server/plan-desk.js";
import type { PlanDocument } from "../../src/service/index.js";

const URI = "file:///plans/a.tileplan";

function documentOf(text: string, version: number): PlanDocument {
  return { uri: URI, file: pathOf(URI), version, text };
}

describe("the plan desk", () => {
  it("has all files of a chain read before a document is ready", async () => {
    let newest = documentOf('use "b.tileplan"\n', 1);
    const documents = { newest: () => newest, all: () => [newest] } as unknown as OpenDocuments;
    const texts: Record<string, string> = {
      "file:///plans/b.tileplan": 'use "c.tileplan"\n',
      "file:///plans/c.tileplan": "let c = 1\n",
    };
    const read = (uri: string): Promise<string | null> => Promise.resolve(texts[uri] ?? null);
    const desk = new PlanDesk({ read, find: () => Promise.resolve([]) }, () => documents);
    desk.files.open(newest);
    const ready = await desk.ready(URI);
    assert.equal(ready, newest);
    assert.deepEqual(desk.service.diagnostics(newest), []);
    assert.equal(desk.usersOf(pathOf("file:///plans/c.tileplan")).length, 1);
    newest = documentOf("bed 1\n", 2);
    assert.equal(desk.newest(URI), newest);
  });

  it("refuses a version that was overtaken while files were read", async () => {
    let newest = documentOf('use "b.tileplan"\n', 1);
    const documents = { newest: () => newest, all: () => [newest] } as unknown as OpenDocuments;
    const read = (): Promise<string | null> => {
      newest = documentOf("bed 1\n", 2);
      return Promise.resolve(null);
    };
    const desk = new PlanDesk({ read, find: () => Promise.resolve([]) }, () => documents);
    await assert.rejects(desk.ready(URI), /text has changed/);
  });

  it("refuses, too, when it was overtaken while all plans were read", async () => {
    const first = documentOf("bed 1\n", 1);
    let newest = first;
    const documents = { newest: () => newest, all: () => [newest] } as unknown as OpenDocuments;
    const read = (): Promise<string | null> => Promise.resolve("bed 3\n");
    const find = () => Promise.resolve(["file:///plans/b.tileplan"]);
    const desk = new PlanDesk({ read, find }, () => documents);
    await desk.readAll(first);
    assert.equal(desk.files.read(pathOf("file:///plans/b.tileplan")), "bed 3\n");
    newest = documentOf("bed 2\n", 2);
    await assert.rejects(desk.readAll(first), /text has changed/);
  });

  it("counts no document among its own users", async () => {
    const document = documentOf('use "a.tileplan"\n', 1);
    const documents = { newest: () => document, all: () => [document] } as unknown as OpenDocuments;
    const system = { read: () => Promise.resolve(null), find: () => Promise.resolve([]) };
    const desk = new PlanDesk(system, () => documents);
    desk.files.open(document);
    await desk.ready(URI);
    assert.deepEqual(desk.usersOf(document.file), []);
  });
});
