import assert from "node:assert/strict";
import { mend } from "./mending.js";

describe("an unclosed block", () => {
  it("is closed behind its last statement, where indentation says that it ends", () => {
    const text = "wall a {\n  size 60 x 96\n  top wall\n\nwall b {\n  size 1m x 2m\n}\n";
    const mended = mend(text, "syntax/unclosed", /Close/);
    assert.equal(
      mended.text,
      "wall a {\n  size 60 x 96\n  top wall\n}\n\nwall b {\n  size 1m x 2m\n}\n",
    );
    assert.ok(!mended.codes.includes("syntax/unclosed"));
  });

  it("is closed behind its heading when it is empty", () => {
    const { codes } = mend("wall a {\n", "syntax/unclosed", /Close/);
    assert.deepEqual(codes, ["plan/missing"]);
  });
});
