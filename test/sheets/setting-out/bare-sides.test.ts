import assert from "node:assert/strict";
import { bareSideOf, placesAlong } from "../../../src/sheets/setting-out/bare-sides.js";
import { inches, laid, wallText } from "./plans.js";

describe("the sides of a bare wall", () => {
  const { wall } = laid(wallText({ right: "wall measured 0: 1/4, 24: -1/4" })).wall;

  it("stand where they were measured", () => {
    assert.deepEqual(bareSideOf(wall, "right"), {
      at: [0, inches(24)],
      value: [inches(40.25), inches(39.75)],
    });
    assert.deepEqual(bareSideOf(wall, "top"), { at: [0], value: [inches(24)] });
  });

  it("are looked at where they were measured, else at both ends", () => {
    assert.deepEqual(placesAlong(wall, "right"), [0, inches(24)]);
    assert.deepEqual(placesAlong(wall, "left"), [0, inches(24)]);
    assert.deepEqual(placesAlong(wall, "bottom"), [0, inches(40)]);
  });
});
