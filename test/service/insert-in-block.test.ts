import assert from "node:assert/strict";
import { insertInBlock } from "../../src/service/insert-in-block.js";
import { statementsOf } from "../../src/service/walk-tree.js";
import { edited } from "./plans.js";
import { stateOf } from "./state-of.js";

/** The text with statements added to its last block; null where that can't be done. */
function inserted(text: string, ...statements: string[]): string | null {
  const state = stateOf(text);
  const blocks = [...statementsOf(state.tree.statements)]
    .map(({ statement }) => statement)
    .filter((statement) => "body" in statement);
  const edit = insertInBlock(state, blocks.at(-1)!, statements);
  return edit && edited(text, [edit]);
}

describe("a statement that is added to a block", () => {
  it("stands at its end, a step further in than the block", () => {
    assert.equal(
      inserted("wall a {\n  lay b {\n    bond stack\n  }\n}\n", "joint 1/8", "up joint at 3"),
      "wall a {\n  lay b {\n    bond stack\n    joint 1/8\n    up joint at 3\n  }\n}\n",
    );
    assert.equal(inserted("wall a {\n}\n", "size 1 x 2"), "wall a {\n  size 1 x 2\n}\n");
  });

  it("keeps tabs and line ends as they are", () => {
    assert.equal(
      inserted("wall a {\r\n\tlay b {\r\n\t}\r\n}\r\n", "joint 1/8"),
      "wall a {\r\n\tlay b {\r\n\t  joint 1/8\r\n\t}\r\n}\r\n",
    );
  });

  it("moves a brace that stands behind a statement to a line of its own", () => {
    assert.equal(
      inserted("tile a { face 1 x 2 }\n", "thickness 1/4"),
      "tile a { face 1 x 2\n  thickness 1/4\n}\n",
    );
    assert.equal(inserted("tile a {}\n", "thickness 1/4"), "tile a {\n  thickness 1/4\n}\n");
  });

  it("is not added to a block that isn't closed", () => {
    assert.equal(inserted("wall a {\n  size 1 x 2\n", "left wall"), null);
  });
});
