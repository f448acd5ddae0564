import assert from "node:assert/strict";
import { constantPlaces, withConstant } from "../../../src/solver/room/constant-places.js";
import { INCH, MOVING, fieldsOn, SASH } from "./small-room.js";

const AT_LEFT = "across full tile from left";

describe("places that are critical wherever the tiles are", () => {
  it("are none where nothing is free in a direction", () => {
    assert.equal(constantPlaces(fieldsOn(SASH, AT_LEFT), "x").size, 0);
    assert.equal(constantPlaces(fieldsOn(MOVING, AT_LEFT), "y").size, 0);
  });

  it("have both ends of a range, and nothing outside it", () => {
    const places = constantPlaces(fieldsOn(MOVING, AT_LEFT), "x").get(0)!;
    assert.ok(places.includes(12 * INCH) && places.includes(17 * INCH), places.join(" "));
    assert.ok(places.every((at) => at >= 12 * INCH && at <= 17 * INCH));
  });

  it("leave a whole tile to another that stands at the end of its own range", () => {
    // The first takes 4 to 8 in at its lowest: 4 in on, from 12 in, the second leaves a whole tile.
    const two = `niche one {\n at 4 to 6, 8\n size 4 x 8\n movement 0\n }
  niche two {\n at 11 to 17, 8\n size 4 x 8\n movement 0\n }`;
    const places = constantPlaces(fieldsOn(two, AT_LEFT), "x").get(1)!;
    assert.ok(places.includes(12 * INCH), places.join(" "));
  });

  it("all stand in a field that starts are looked for in", () => {
    const fields = fieldsOn(MOVING, AT_LEFT);
    const lefts = withConstant(fields, "x", fields.base(fields.drawn.stop).fields.own).boxes.map(
      ({ left }) => left / INCH,
    );
    assert.ok(lefts.includes(12) && lefts.includes(17), lefts.join(" "));
  });
});
