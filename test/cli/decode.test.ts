import assert from "node:assert/strict";
import { decode, LARGEST_FILE } from "../../src/cli/decode.js";
import { Failure } from "../../src/cli/failure.js";

function bytes(...parts: (string | number)[]): Uint8Array {
  return Buffer.concat(parts.map((p) => (typeof p === "string" ? Buffer.from(p) : Buffer.of(p))));
}

function refusal(content: Uint8Array): string {
  try {
    decode("a", content);
  } catch (error) {
    assert.ok(error instanceof Failure);
    return `${error.message} | ${error.hint ?? ""}`;
  }
  return "nothing";
}

describe("decode", () => {
  it("reads UTF-8, without its byte order mark", () => {
    assert.deepEqual(decode("a", bytes(0xef, 0xbb, 0xbf, "bed 1 # é")), {
      text: "bed 1 # é",
      diagnostics: [],
    });
    assert.equal(decode("a", bytes()).text, "");
  });

  it("keeps the rest of a text with stray bytes, and tells the first at its place", () => {
    const { text, diagnostics } = decode("a", bytes("units mm\r\n# caf", 0xe9, " ", 0xff, "\n"));
    assert.equal(text, "units mm\r\n# caf\ufffd \ufffd\n");
    assert.deepEqual(diagnostics, [
      {
        code: "text/encoding",
        severity: "error",
        message: "the byte 0xE9 is no UTF-8 text: save the file as UTF-8",
        file: "a",
        range: { start: { line: 1, character: 5 }, end: { line: 1, character: 6 } },
      },
    ]);
  });

  it("names the right byte where the text ends in the middle of a character", () => {
    const { diagnostics } = decode("a", bytes("é", 0xc3));
    assert.match(diagnostics[0]!.message, /byte 0xC3/);
    assert.deepEqual(diagnostics[0]!.range.start, { line: 0, character: 1 });
  });

  it("names the stray byte's place where the text holds U+FFFD of its own before it", () => {
    const { diagnostics } = decode("a", bytes("\ufffd", 0xff));
    assert.deepEqual(diagnostics[0]!.range.start, { line: 0, character: 1 });
  });

  it("refuses what is no text, and says how to save it", () => {
    assert.equal(refusal(bytes(0xff, 0xfe, "b", 0)), "it is UTF-16 text | save it as UTF-8");
    assert.equal(refusal(bytes("PK", 3, 4, 0)), "it is not a text (it holds zero bytes) | ");
    const size = new Uint8Array(LARGEST_FILE + 1).fill(32);
    assert.equal(refusal(size), "16.0 MB is too large for a plan | the limit is 16 MB");
    assert.equal(decode("a", size.subarray(1)).text.length, LARGEST_FILE);
  });
});
