import assert from "node:assert/strict";
import { tidy } from "../../src/language/index.js";
import { exampleNames, exampleText } from "../support/examples.js";
import { mutate } from "../support/mutate.js";
import { randomFrom } from "../support/random.js";
import { edited, Plans } from "./plans.js";

describe("format document", () => {
  it("changes the lines alone that are untidy", () => {
    const plans = new Plans();
    const text = "units  mm\nbed 4\nlet a=1\n";
    const edits = plans.service.format(plans.open(text));
    assert.deepEqual(
      edits.map(({ range }) => range.start.line),
      [0, 2],
    );
    assert.equal(edited(text, edits), "units mm\nbed 4\nlet a = 1\n");
  });

  it("comes to the tidied text, also where lines go", () => {
    const plans = new Plans();
    const random = randomFrom(3);
    const texts = exampleNames().map(exampleText);
    for (let i = 0; i < 100; i++) {
      const text = mutate(texts[i % texts.length]!, random).replace(/\r(?!\n)/g, "");
      const edits = plans.service.format(plans.open(text));
      assert.equal(edited(text, edits), tidy(text), JSON.stringify(text));
    }
  });

  it("is nothing for a tidy text", () => {
    const plans = new Plans();
    for (const name of exampleNames()) {
      assert.deepEqual(plans.service.format(plans.open(exampleText(name))), []);
    }
  });
});
