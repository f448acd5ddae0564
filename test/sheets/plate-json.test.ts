import assert from "node:assert/strict";
import { plateJson } from "../../src/sheets/plate-json.js";

describe("a plate as JSON", () => {
  it("is in millimetres, without a height where it is round", () => {
    assert.deepEqual(plateJson({ kind: "round", across: 165_100_000 }), { across: 165.1 });
    const square = { kind: "square", across: 150_000_000, up: 100_500_000 } as const;
    assert.deepEqual(plateJson(square), { across: 150, up: 100.5 });
  });
});
