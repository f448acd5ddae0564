import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { create } from "fontkit";
import { readFonts } from "../../src/cli/print-fonts.js";

const dist = fileURLToPath(new URL("../../dist", import.meta.url));

describe("the print font's files", () => {
  it("are the built ones, both weights", () => {
    const { regular, bold } = readFonts(dist);
    for (const [file, name] of [
      [regular, "OpenSans-Regular"],
      [bold, "OpenSans-Bold"],
    ] as const) {
      const font = create(Buffer.from(file));
      assert.equal("postscriptName" in font && font.postscriptName, name);
      assert.ok(file.length < 60_000, `${file.length} bytes`);
    }
  });

  it("are missed in words of a person", () => {
    assert.throws(
      () => readFonts("/nowhere"),
      /^Failure: the print font could not be read: there is no such file/,
    );
  });
});
