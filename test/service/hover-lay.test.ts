import assert from "node:assert/strict";
import { run } from "../../src/engine.js";
import { Figures } from "../../src/service/figures.js";
import { hoverLay } from "../../src/service/hover-lay.js";
import { exampleSource, exampleText } from "../support/examples.js";

describe("a lay in figures", () => {
  it("tells the ends of each phase of its bond, and an end that is hidden", () => {
    const name = "three-walls.tileplan";
    const { solved } = run(exampleText(name), exampleSource(name));
    const [lay] = solved.walls[0]!.lays;
    const text = hoverLay(lay!, new Figures("inch"));
    assert.match(text, /ends of course 1: left 5 7\/8 in \(whole\), right /);
    assert.match(text, /ends of course 2: /);
    assert.ok(!text.includes("ends of course 3"));
  });
});
