import assert from "node:assert/strict";
import { findings } from "./wall-text.js";

describe("wall/too-large", () => {
  it("tells a wall that asks for more pieces than are laid, at the wall", () => {
    const text = { face: "1/8 x 1/8", joint: "1/16", size: "300 x 300" };
    const [found] = findings(text, "wall/too-large");
    assert.equal(found!.severity, "error");
    assert.match(
      found!.message,
      /^wall "back" asks for about 2,5\d\d,\d\d\d pieces and is not laid/,
    );
  });

  it("is silent about any other", () => {
    assert.deepEqual(findings({}, "wall/too-large"), []);
  });
});
