import assert from "node:assert/strict";
import { mend } from "./mending.js";

describe("a corner that the other wall doesn't answer", () => {
  it("is answered there", () => {
    const text =
      "wall a {\n  size 60 x 96\n  left corner b under\n}\nwall b {\n  size 40 x 96\n}\n";
    const mended = mend(text, "plan/corner-unanswered", /right corner a over/);
    assert.ok(mended.text.endsWith("  size 40 x 96\n  right corner a over\n}\n"));
    assert.deepEqual(mended.codes, []);
  });
});
