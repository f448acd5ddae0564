import assert from "node:assert/strict";
import { softJson } from "../../src/sheets/soft-json.js";
import { firstWall, solveClean } from "../support/solve-text.js";

const PLAN = `units mm
tile field {
  face 100 x 50
  thickness 8
}
wall back {
  size 500 x 310
  left free
  right free
  bottom free
  top free
  lay field {
    bond stack
    joint 2
    across full tile from left
    up full course from bottom
  }
}
`;
const jsonOf = (lay: string, wall = "") =>
  softJson(
    firstWall(
      solveClean(PLAN.replace("stack", `stack\n${lay}`).replace("top free", `top free\n${wall}`)),
    ).wall,
  );

describe("soft joints in the tile as JSON", () => {
  it("are none where the plan states none", () => {
    assert.deepEqual(jsonOf(""), []);
  });

  it("tell their sides and what is filled, in millimetres", () => {
    assert.deepEqual(jsonOf("movement joint at 250\nmovement joint over course 2"), [
      {
        way: "level",
        over: 2,
        from: 102,
        to: 104,
        outlines: [
          [
            [0, 102],
            [500, 102],
            [500, 104],
            [0, 104],
          ],
        ],
      },
      {
        way: "upright",
        from: 202,
        to: 204,
        outlines: [
          [
            [202, 0],
            [204, 0],
            [204, 102],
            [202, 102],
          ],
          [
            [202, 104],
            [204, 104],
            [204, 310],
            [202, 310],
          ],
        ],
      },
    ]);
  });

  it("tell the lays that one lies between", () => {
    const wall = "lay field {\n bond stack\n joint 2\n}";
    const [found] = jsonOf("covers bottom to 102\nbetween movement 5", wall) as {
      between: string[];
    }[];
    assert.deepEqual(found!.between.sort(), ["field", "field-2"]);
  });
});
