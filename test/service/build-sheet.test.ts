import assert from "node:assert/strict";
import { createService } from "../../src/service/index.js";
import { exampleSource, exampleText } from "../support/examples.js";

describe("the sheet of a document", () => {
  const { read } = exampleSource("back-wall.tileplan");
  const service = createService({ read, rootOf: () => "", plans: () => [] } as never);
  const document = (text: string) => ({
    ...{ file: "back-wall.tileplan", uri: "file:///back-wall.tileplan", version: 4, text },
  });

  it("has a page for the job, the wall, the purchases and the poles, and the text's version", () => {
    const { paper, version, size } = service.sheet(document(exampleText("back-wall.tileplan")));
    assert.deepEqual(
      paper.pages.map(({ id }) => id),
      ["plan", "wall-back", "shopping-list", "poles-back"],
    );
    assert.equal(version, 4);
    assert.equal(size, "letter");
  });

  it("names no revision: the text may not be saved", () => {
    assert.equal(service.sheet(document("")).paper.revision, null);
  });
});
