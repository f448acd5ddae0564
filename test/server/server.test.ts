import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { TestClient } from "./client.js";

const URI = "file:///plans/back.tileplan";

describe("the server, over stdio", () => {
  let client: TestClient;
  beforeEach(() => {
    client = new TestClient();
  });
  afterEach(async () => {
    assert.equal(await client.stop(), 0);
  });

  it("tells what is wrong with a document as it opens and as it changes", async () => {
    await client.start();
    await client.open(URI, "wall back {\n  size 60 x\n}\n");
    const [first] = await client.diagnostics(URI, 1);
    assert.equal(first?.code, "syntax/unexpected");
    await client.change(URI, 2, {
      range: { start: { line: 1, character: 11 }, end: { line: 1, character: 11 } },
      text: " 96",
    });
    assert.deepEqual(await client.diagnostics(URI, 2), []);
  });

  it("has what is told of an example's faults ordered by place, with links to sources", async () => {
    await client.start();
    await client.open(URI, readFileSync("examples/faults.tileplan", "utf8"));
    const told = await client.diagnostics(URI, 1);
    assert.ok(told.length > 10);
    const lines = told.map(({ range }) => range.start.line);
    assert.deepEqual(
      lines,
      [...lines].sort((a, b) => a - b),
    );
    const narrow = told.find(({ code }) => code === "joint/too-narrow");
    assert.equal(
      narrow?.codeDescription?.href,
      "https://tileletter.com/what-is-minimum-grout-joint",
    );
  });
});
