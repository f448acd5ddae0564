import assert from "node:assert/strict";
import { isFree, settle, settledOf } from "../../../src/solver/room/settle.js";
import { INCH, planOf, STOCK } from "../../language/telling.js";

const [wall] = planOf(`${STOCK}
wall back {
  size 60 x 72 to 78
  top free
  niche shelf {
    at 20 to 26, 40
    size 12 x 12
  }
  lay field {
    bond stack
    joint 1/16
    across tile centred on shelf
    up full course over shelf
  }
}
`).walls;

describe("settling a wall", () => {
  it("moves its openings and its top, and what its lay says of them", () => {
    assert.equal(isFree(wall!), true);
    const moved = settle(wall!, { stop: 75 * INCH, places: [{ x: 22 * INCH, y: 40 * INCH }] });
    assert.equal(moved.size.up, 75 * INCH);
    const [shelf] = moved.openings;
    assert.deepEqual(shelf!.at, { x: 22 * INCH, y: 40 * INCH });
    const { across, up } = moved.lays[0]!;
    assert.ok(across?.kind === "tile" && across.centre.on === "opening");
    assert.equal(across.centre.opening, shelf);
    assert.ok(up?.kind === "at-opening");
    assert.equal(up.opening, shelf);
  });

  it("leaves it as it is drawn with what it has", () => {
    assert.deepEqual(settle(wall!, settledOf(wall!)), wall);
  });
});
