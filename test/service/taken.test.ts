import assert from "node:assert/strict";
import { run } from "../../src/engine.js";
import { takenOf } from "../../src/service/taken.js";
import { takeoff } from "../../src/takeoff/index.js";
import { exampleSource, exampleText } from "../support/examples.js";

describe("what a plan takes", () => {
  const { solved } = run(exampleText("back-wall.tileplan"), exampleSource("back-wall.tileplan"));

  it("is the takeoff, and worked out once", () => {
    assert.deepEqual(takenOf(solved), takeoff(solved));
    assert.equal(takenOf(solved), takenOf(solved));
  });
});
