import assert from "node:assert/strict";
import { Plans, withCursor } from "./plans.js";

function selectionsAt(marked: string): string[] {
  const { text, at } = withCursor(marked);
  const plans = new Plans();
  const lines = text.split("\n");
  return plans.service.selections(plans.open(text), at).map(({ start, end }) => {
    const cut = lines.slice(start.line, end.line + 1);
    cut[cut.length - 1] = cut.at(-1)!.slice(0, end.character);
    cut[0] = cut[0]!.slice(start.character);
    return cut.join("\n");
  });
}

describe("selection ranges", () => {
  it("grow from the word by way of expression, statement and block to the whole text", () => {
    assert.deepEqual(selectionsAt("wall a {\n  size (b| + 1) x 2\n  top wall\n}\n"), [
      "b",
      "b + 1",
      "size (b + 1) x 2",
      "size (b + 1) x 2\n  top wall",
      "wall a {\n  size (b + 1) x 2\n  top wall\n}",
      "wall a {\n  size (b + 1) x 2\n  top wall\n}\n",
    ]);
  });

  it("are one in another at every place of a broken text", () => {
    const text = 'wall a {\n  size 60 x\n  window "b {\n    at (((, 3\n}}\n';
    for (let offset = 0; offset <= text.length; offset++) {
      const parts = selectionsAt(`${text.slice(0, offset)}|${text.slice(offset)}`);
      parts.slice(1).forEach((part, i) => assert.ok(part.includes(parts[i]!)));
      assert.ok(parts.length > 0);
    }
  });
});
