import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { roomFigures } from "../../../src/sheets/options/room-figures.js";
import { solve } from "../../../src/solver/index.js";
import { askedOf, roomWall, SASH } from "../../solver/room/small-room.js";

describe("a room's figures", () => {
  it("are its smallest sizes, its cuts and the tiles that it takes", () => {
    const lay = "across full tile from left\n up full course from bottom";
    const figures = roomFigures(solve(askedOf(roomWall("back", SASH, lay))));
    const { width, height, cutPieces, tilesNeeded } = figures;
    // Ten pieces 2 in high at the top, four 1 in high under the window and four 3 in high over it.
    assert.deepEqual([width! / NM_PER.inch, height! / NM_PER.inch, cutPieces], [4, 1, 18]);
    // 58 whole tiles, and at least 4 for what is 3 in high and 5 for what is 2 in high.
    assert.ok(tilesNeeded >= 67 && tilesNeeded <= 76, `${tilesNeeded}`);
  });

  it("have no smallest size where nothing is cut", () => {
    const whole = roomWall("back", "", "across full tile from left\n up full course from bottom");
    const { width, height } = roomFigures(solve(askedOf(whole.replace("40 x 30", "40 x 32"))));
    assert.deepEqual([width, height], [null, null]);
  });
});
