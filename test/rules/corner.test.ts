import assert from "node:assert/strict";
import { solveText } from "../support/solve-text.js";
import { cornersOver } from "../../src/rules/corner.js";
import { cornersOf, cornerText } from "./corner-text.js";

describe("the corners of a plan", () => {
  it("are each found once, at the wall whose tile covers the other's", () => {
    const corners = cornersOf(cornerText());
    assert.deepEqual(
      corners.map(({ over, under, edge }) => [
        over.wall.wall.name,
        over.side,
        under.wall.wall.name,
        under.side,
        edge.side,
      ]),
      [["side", "left", "back", "right", "left"]],
    );
  });

  it("are none where the other wall doesn't agree, or isn't tiled", () => {
    const count = (text: string): number => {
      const { solved } = solveText(text);
      return solved.walls.flatMap((wall) => cornersOver(wall, solved)).length;
    };
    assert.equal(count(cornerText({ corner: "corner side over movement 1/8" })), 0);
    assert.equal(count(cornerText({ corner: "wall movement 1/8" })), 0);
    assert.equal(count(cornerText().replace(/lay field \{[^}]*\}/, "")), 0);
  });
});
