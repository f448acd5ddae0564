import assert from "node:assert/strict";
import { doublePieceArea } from "../../src/solver/index.js";
import { firstWall, solveClean } from "../support/solve-text.js";

/** Four 6 x 3 in tiles round one of 3 x 3, without joints: a square of 9 in. Each is a panel of one tile. */
const TEXT = `plan "Windmill"
units inch
tile long {\n  face 6 x 3\n  thickness 1/4\n}
tile upright {\n  face 3 x 6\n  thickness 1/4\n}
tile stud {\n  face 3 x 3\n  thickness 1/4\n}
wall back {
  size 9 x 9
  left free
  right free
  bottom free
  top free
${panel("long", "0, 0", "6 x 3")}
${panel("upright", "6, 0", "3 x 6")}
${panel("long", "3, 6", "6 x 3")}
${panel("upright", "0, 3", "3 x 6")}
${panel("stud", "3, 3", "3 x 3")}
}
`;

function panel(tile: string, at: string, size: string): string {
  return `  lay ${tile} {\n    at ${at}\n    size ${size}\n    bond stack\n    joint 0\n    across full tile from left\n    up full course from bottom\n  }`;
}

// Published: a windmill of four 2:1 rectangles round one square has 8/9 and 1/9 of each by area
// (spotidoc.com/doc/88497, no joints).
describe("a windmill of four rectangles round a square (spotidoc.com/doc/88497)", () => {
  const { wall } = firstWall(solveClean(TEXT));
  const areaOf = (tiles: readonly string[]): bigint =>
    wall.lays
      .filter(({ lay }) => tiles.includes(lay.tile.name))
      .reduce((sum, { pieces }) => sum + doublePieceArea(pieces, 0), 0n);

  it("is five whole tiles without a cut", () => {
    assert.deepEqual(
      wall.lays.map(({ pieces }) => [pieces.count, pieces.cut[0]]),
      [1, 2, 3, 4, 5].map(() => [1, 0]),
    );
  });

  it("is 8/9 rectangles and 1/9 square", () => {
    const [rectangles, square] = [areaOf(["long", "upright"]), areaOf(["stud"])];
    assert.equal(9n * rectangles, 8n * (rectangles + square));
    assert.equal(rectangles + square, 2n * (9n * 25_400_000n) ** 2n);
  });
});
