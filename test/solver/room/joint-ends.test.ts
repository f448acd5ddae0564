import assert from "node:assert/strict";
import { endsOf } from "../../../src/solver/room/joint-ends.js";
import { fieldsOn, INCH, MOVING, SASH } from "./small-room.js";

describe("a wall at both ends of a range of joints", () => {
  it("has the start that is stated, and no other", () => {
    const fields = fieldsOn(SASH, "across full tile from left\n up full course over sash");
    const [{ starts }] = endsOf(fields, fields, false) as [ReturnType<typeof endsOf>[number]];
    assert.deepEqual(starts!.across, [{ least: 0, most: 0 }]);
    assert.deepEqual(starts!.up, [{ least: 21 * INCH, most: 21 * INCH }]);
  });

  it("has a tile and a joint in the middle of what is wanted so, where it is open", () => {
    const fields = fieldsOn(SASH, "", "prefer {\n centre on sash\n}\n");
    const [ends] = endsOf(fields, fields, false);
    assert.deepEqual(
      ends!.starts!.across.map(({ least }) => least / INCH),
      [18, 20],
    );
  });

  it("has what may move at the ends of its range if that is asked for", () => {
    const fields = fieldsOn(MOVING, "");
    const lefts = (isAll: boolean) =>
      new Set(endsOf(fields, fields, isAll)[0]!.least.boxes.map(({ left }) => left / INCH));
    assert.equal(lefts(false).has(17), false);
    assert.equal(lefts(true).has(17), true);
  });
});
