import assert from "node:assert/strict";
import { parse, resolve } from "../../../src/language/index.js";

function letsOf(text: string, used: string | null = null): Record<string, unknown> {
  const source = { file: "a.tileplan", root: "", read: () => used };
  return Object.fromEntries(resolve(parse(text), source).lets);
}

describe("what lets come to", () => {
  it("is a length in the file's units, or a plain number", () => {
    assert.deepEqual(letsOf("units mm\nlet a = 3\nlet b = a / 2mm\n"), {
      a: { kind: "length", nm: 3_000_000 },
      b: { kind: "number", value: 1.5 },
    });
  });

  it("is null for a circle and for what is too long", () => {
    assert.deepEqual(letsOf("let a = a\n"), { a: null });
    assert.deepEqual(letsOf("units m\nlet a = 9999 * 9999\n"), { a: null });
  });

  it("is in the used file's own units", () => {
    const brought = letsOf('units inch\nuse "b.tileplan"\n', "units mm\nlet a = 3\n");
    assert.deepEqual(brought, { a: { kind: "length", nm: 3_000_000 } });
  });
});
