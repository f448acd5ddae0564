import assert from "node:assert/strict";
import { plainStatement } from "./plain-statement.js";

describe("the syntax tree", () => {
  const statements: Record<string, unknown> = {
    'plan "A"': { kind: "plan", title: '"A"' },
    "units mm": { kind: "units", unit: "mm" },
    "bed 1/8": { kind: "bed", length: "1/8" },
    "let a = b": { kind: "let", name: "a", value: "b" },
    'use "a.tileplan"': { kind: "use", path: '"a.tileplan"' },
    'allow cut/under-half "why"': { kind: "allow", code: "cut/under-half", reason: '"why"' },
  };
  for (const [text, wanted] of Object.entries(statements)) {
    it(`has ${text}`, () => assert.deepEqual(plainStatement(`${text}\n`, 0), wanted));
  }

  it("has limits", () => {
    assert.deepEqual(plainStatement("rules {\n half off, sliver 1\n}\n", 0, 1), {
      kind: "limit",
      name: "sliver",
      value: "1",
    });
  });
});
