import assert from "node:assert/strict";
import { NameIndex } from "../../src/service/file-names.js";
import { Plans, STOCK_FILE } from "./plans.js";

describe("the names of files", () => {
  const texts = {
    "/plans/a.tileplan":
      'use "b.tileplan"\nuse "stock.tileplan"\nwall w {\n  lay pressed {\n  }\n}\n',
    "/plans/b.tileplan": 'use "a.tileplan"\nlet z = 1\n',
  };

  it("are declared by the file that brings them, circles or not", () => {
    const index = new NameIndex(new Plans(texts));
    const file = index.of("/plans/a.tileplan")!;
    const pressed = file.names.find(({ word }) => word.text === "pressed")!;
    assert.equal(index.declaringFile(file, pressed)?.file, STOCK_FILE);
    const unknown = { ...pressed, word: { ...pressed.word, text: "nothing" } };
    assert.equal(index.declaringFile(file, unknown), null);
  });

  it("are read once for each text", () => {
    const plans = new Plans(texts);
    const index = new NameIndex(plans);
    const file = index.of(STOCK_FILE);
    assert.equal(index.of(STOCK_FILE), file);
    plans.texts.set(STOCK_FILE, "bed 1\n");
    assert.notEqual(index.of(STOCK_FILE), file);
    plans.texts.delete(STOCK_FILE);
    assert.equal(index.of(STOCK_FILE), null);
  });
});
