import assert from "node:assert/strict";
import { wallText } from "../../rules/wall-text.js";
import { mend } from "./mending.js";

describe("a hole's middle, written anew", () => {
  it("leaves what doesn't change as it is written", () => {
    const text = wallText({
      size: "60 x 30",
      plan: "let line = 9",
      wall: "  hole valve at line, 4 across 1",
    });
    const mended = mend(text, "hole/near-edge", /^Move valve/);
    assert.ok(mended.text.includes("hole valve at line, 4 1/8 across 1\n"), mended.text);
  });
});
