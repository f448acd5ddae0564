import assert from "node:assert/strict";
import { Plans } from "./plans.js";

function tokensOf(text: string): string[] {
  const plans = new Plans();
  const lines = text.split("\n");
  return plans.service.tokens(plans.open(text)).map(({ kind, declares, range }) => {
    const word = lines[range.start.line]!.slice(range.start.character, range.end.character);
    return `${kind} ${word}${declares ? " declared" : ""}`;
  });
}

describe("name tokens", () => {
  it("tell what each name is, where it is given and where it is used", () => {
    const text =
      'use "stock.tileplan"\nlet a = 1\nwall w {\n  size a x a\n  left free trim nose\n  window s {\n  }\n  hole v at a, 1 across 1\n  lay pressed {\n    up full course over s\n  }\n}\n';
    assert.deepEqual(tokensOf(text), [
      "let a declared",
      "wall w declared",
      "let a",
      "let a",
      "trim nose",
      "opening s declared",
      "hole v declared",
      "let a",
      "tile pressed",
      "opening s",
    ]);
  });

  it("leave out names that nothing declares", () => {
    assert.deepEqual(tokensOf("bed nothing\n"), []);
  });
});
