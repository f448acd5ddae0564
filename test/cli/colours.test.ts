import assert from "node:assert/strict";
import { paintFor, usesColours } from "../../src/cli/colours.js";

describe("colours", () => {
  it("are used on a terminal only", () => {
    assert.equal(usesColours({}, true), true);
    assert.equal(usesColours({}, false), false);
    assert.equal(usesColours({}, undefined), false);
    assert.equal(usesColours({ TERM: "dumb" }, true), false);
  });

  it("heed NO_COLOR unless it is empty, and FORCE_COLOR before it", () => {
    assert.equal(usesColours({ NO_COLOR: "1" }, true), false);
    assert.equal(usesColours({ NO_COLOR: "" }, true), true);
    assert.equal(usesColours({ FORCE_COLOR: "1" }, false), true);
    assert.equal(usesColours({ FORCE_COLOR: "0" }, true), false);
    assert.equal(usesColours({ FORCE_COLOR: "1", NO_COLOR: "1" }, false), true);
  });

  it("wrap a text and end after it, and leave it alone when off", () => {
    assert.equal(paintFor(true)("error", "x"), "\u001b[1;31mx\u001b[0m");
    assert.equal(paintFor(true)("error", ""), "");
    assert.equal(paintFor(false)("error", "x"), "x");
  });
});
