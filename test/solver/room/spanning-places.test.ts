import assert from "node:assert/strict";
import { latticeOf } from "../../../src/solver/lattice.js";
import { regionOf } from "../../../src/solver/region.js";
import { placeSpanning } from "../../../src/solver/room/spanning-places.js";
import { askedOf, INCH, roomWall } from "./small-room.js";

/** Where a window of 16 x 8 in comes to stand on a wall of 4 x 4 in tile without joints; the second of several. */
function placed(at: string, others = "", left = "free") {
  const sash = `${others} window sash {\n at ${at}\n size 16 x 8\n movement 0\n }`;
  const lay = "across full tile from left\n up full course from bottom";
  const text = roomWall("back", sash, lay).replace("left free", `left ${left}`);
  const plan = askedOf(`prefer {\n few cuts\n}\n${text}`);
  const [wall] = plan.walls;
  const [own] = wall!.lays;
  const i = wall!.openings.findIndex(({ name }) => name === "sash");
  const tiledAt = (each: typeof wall & object, joint: number) => regionOf(plan, each, joint);
  const spanned = { lay: own!, lattice: latticeOf(own!, 0, 0, 0), tiledAt };
  return placeSpanning(plan, wall!, i, [spanned], plan.wishes);
}

const inches = (place: ReturnType<typeof placed>) =>
  place && [place.at.x / INCH, place.at.y / INCH];

describe("a place for lays as they stand", () => {
  it("is the best along the direction that is free", () => {
    const found = placed("9 to 14, 12");
    assert.deepEqual([inches(found), found!.capped], [[12, 12], false]);
  });

  it("is the best along each of two, which says that a better one may be left", () => {
    const found = placed("9 to 14, 9 to 14");
    assert.deepEqual([inches(found), found!.capped], [[12, 12], true]);
  });

  it("is none where it doesn't stay inside the tile", () => {
    assert.equal(placed("0 to 1/2, 12", "", "wall movement 1"), null);
  });

  it("is clear of the rest where only part of its range is", () => {
    // Whole tiles would be left at 8, 12 and 16 in, but from 8 in on it meets the hole.
    const hole = "hole valve at 27, 16 across 4\n";
    assert.deepEqual(inches(placed("5 to 17, 12", hole)), [8, 12]);
    assert.deepEqual(inches(placed("9 to 17, 12")), [12, 12]);
  });
});
