import assert from "node:assert/strict";
import {
  edgeTrim,
  endsTile,
  isCorner,
  type Meeting,
  showsEnd,
  type Trim,
} from "../../src/model/index.js";

const nose = { name: "nose" } as Trim;
const over = (trim: Trim | null): Meeting => ({ kind: "outside", wall: "side", lap: "over", trim });
const under: Meeting = { kind: "outside", wall: "side", lap: "under" };
const inside: Meeting = { kind: "corner", wall: "side", lap: "over" };

describe("what a side meets", () => {
  it("is a corner inside and outside a room", () => {
    assert.deepEqual([inside, under, over(nose), { kind: "wall" } as const].map(isCorner), [
      true,
      true,
      true,
      false,
    ]);
  });

  it("has a trim where it is free, or laps over an outside corner", () => {
    assert.equal(edgeTrim({ kind: "free", trim: nose }), nose);
    assert.equal(edgeTrim(over(nose)), nose);
    assert.deepEqual([inside, under, over(null), { kind: "wall" } as const].map(edgeTrim), [
      null,
      null,
      null,
      null,
    ]);
  });

  it("ends the tile in the open there alone, and shows its end where no trim covers it", () => {
    const meetings: Meeting[] = [
      { kind: "free", trim: null },
      over(nose),
      over(null),
      under,
      inside,
    ];
    assert.deepEqual(meetings.map(endsTile), [true, true, true, false, false]);
    assert.deepEqual(meetings.map(showsEnd), [true, false, true, false, false]);
  });
});
