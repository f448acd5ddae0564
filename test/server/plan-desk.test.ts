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
});
