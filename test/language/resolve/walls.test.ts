import assert from "node:assert/strict";
import { FULL, planOf } from "../telling.js";

describe("walls", () => {
  it("stand in the order of the text", () => {
    assert.deepEqual(
      planOf(FULL).walls.map(({ name, title }) => [name, title]),
      [
        ["back", "Back wall"],
        ["plumbing", ""],
      ],
    );
  });

  it("have all that their blocks say", () => {
    const [back, plumbing] = planOf(FULL).walls;
    assert.deepEqual(
      back!.openings.map(({ kind, name }) => [kind, name]),
      [
        ["window", "sash"],
        ["niche", "soap"],
      ],
    );
    assert.deepEqual(
      back!.holes.map(({ name }) => name),
      ["valve"],
    );
    assert.equal(back!.lays[0]!.tile.name, "field");
    assert.equal(back!.edges.right.meets.kind, "free");
    assert.deepEqual(plumbing!.lays[0]!.bond, { kind: "stack" });
    assert.deepEqual(plumbing!.size, { across: 914_400_000, up: 2_438_400_000 });
  });
});
