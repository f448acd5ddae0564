import assert from "node:assert/strict";
import { softBands } from "../../../src/drawing/scene/soft-bands.js";
import { boundsOfPoints } from "../../../src/drawing/picture.js";
import { planOf, solvedWallOf, wallText } from "../support/scene-of.js";

const START =
  "    bond stack\n    joint 1/8\n    across full tile from left\n    up full course from bottom";

function bandsOf(soft: string, inside = "") {
  return softBands(solvedWallOf(planOf(wallText(inside, "back", `${START}\n${soft}`))).solved);
}

describe("the bands of soft joints in the tile", () => {
  it("are none where the plan states none", () => {
    assert.deepEqual(bandsOf(""), []);
  });

  it("are as wide as the joint, from side to side", () => {
    const [band] = bandsOf("    movement joint over course 2");
    const { top, bottom } = boundsOfPoints(band!.rings[0]!);
    assert.deepEqual([band!.kind, band!.part], ["soft", "tile-1"]);
    assert.equal(Math.round((bottom - top) * 1000), 3175);
  });

  it("have a ring for each stretch between openings", () => {
    const window = "  window w {\n    at 12, 3\n    size 9 x 10\n    movement 1/8\n  }";
    const [band] = bandsOf("    movement joint over course 2", window);
    assert.equal(band!.rings.length, 2);
  });
});
