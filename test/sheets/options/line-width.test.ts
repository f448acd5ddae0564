import assert from "node:assert/strict";
import { LINE_WIDTH } from "../../../src/sheets/options/line-width.js";
import { optionsText } from "../../../src/sheets/options/options-text.js";
import { exampleNames, exampleSource, exampleText } from "../../support/examples.js";
import { run } from "../../../src/engine.js";

describe("the width of the options' lines", () => {
  it("holds for every example", () => {
    for (const name of exampleNames()) {
      const { solved } = run(exampleText(name), exampleSource(name));
      for (const line of [...optionsText(solved)].join("").split("\n")) {
        assert.ok(line.length <= LINE_WIDTH, `${name}: ${line}`);
      }
    }
  });
});
