import assert from "node:assert/strict";
import { MOST_PIECES } from "../../src/solver/index.js";
import { MOST_SCRIBED } from "../../src/solver/refusals.js";
import { solveText } from "../support/solve-text.js";

function walls(face: string, ...bodies: string[]) {
  const tile = `units mm\ntile t { face ${face}\n thickness 8 }\n`;
  const lay = `lay t { bond stack
    joint 1
    across full tile from left
    up full course from bottom }`;
  return solveText(tile + bodies.map((body, i) => `wall w${i} { ${body}\n${lay} }`).join("\n"))
    .solved.walls;
}

describe("solve", () => {
  it("lays every wall of the plan in the order of the text", () => {
    const solved = walls("99 x 99", "size 1000 x 1000", "size 500 x 500");
    assert.deepEqual(
      solved.map(({ wall, lays }) => [wall.name, lays[0]!.pieces.count]),
      [
        ["w0", 100],
        ["w1", 25],
      ],
    );
  });

  it("refuses a wall that asks for more pieces than the plan may have, and lays the rest", () => {
    const [huge, small] = walls("0.5 x 0.5", "size 6000 x 3000", "size 50 x 50");
    assert.equal(huge!.lays.length, 0);
    assert.ok(huge!.refused!.pieces > MOST_PIECES);
    assert.equal(small!.refused, null);
  });

  it("refuses a measured side with more scribed pieces than it may have", () => {
    const [wall] = walls(
      "1 x 300",
      "size 60000 x 310\nbottom pan measured 0: 0, 60000: 20 movement 3",
    );
    assert.equal(wall!.refused!.most, MOST_SCRIBED);
  });

  it("has a region and no lay for a wall without one", () => {
    const { solved } = solveText("units mm\nwall w { size 1000 x 900 }");
    assert.deepEqual(solved.walls[0]!.lays, []);
    assert.equal(solved.walls[0]!.refused, null);
  });
});
