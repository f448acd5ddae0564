import assert from "node:assert/strict";
import { firstRow, startOf } from "../../../src/solver/choose/weigh.js";
import { compareCosts, type Cost, sumOf } from "../../../src/solver/room/cost.js";
import { MovingOpenings } from "../../../src/solver/room/moving-openings.js";
import { PlacesAt } from "../../../src/solver/room/places-at.js";
import type { WallFields } from "../../../src/solver/room/wall-fields.js";
import { weighWall } from "../../../src/solver/room/weigh-wall.js";
import { fieldsOn, INCH } from "./small-room.js";

const WISHES = "prefer {\n no cut under 1 1/2\n few cuts\n}\n";

function movingOn(fields: WallFields): MovingOpenings {
  const places = { x: new PlacesAt(fields, "x", true), y: new PlacesAt(fields, "y", true) };
  return new MovingOpenings(fields, places, true);
}

/** The wall's cost with its openings where they are found, and as the wall so settled is weighed whole. */
function bothCosts(fields: WallFields, x: number, y: number): { found: Cost; whole: Cost } {
  const base = fields.base(fields.drawn.stop).fields;
  const start = startOf(base.own, x, y);
  const first = firstRow(base.own, start, fields.effort);
  const placed = movingOn(fields).best(base, { x, y, first }, null)!;
  const settled = {
    ...fields.drawn,
    places: fields.drawn.places.map((at, i) => placed.places.get(i) ?? at),
  };
  const at = fields.at(settled);
  return {
    found: sumOf(weighWall(fields, base, start, null)!, placed.cost),
    whole: weighWall(fields, at, startOf(at.own, x, y), null)!,
  };
}

/** The least cost of the wall with one opening at any place in steps of 1/4 in. */
function bestOfSteps(fields: WallFields, x: number, y: number): Cost {
  const { free } = fields.wall.openings[0]!;
  let best: Cost | null = null;
  for (let px = free.x!.min; px <= free.x!.max; px += INCH / 4) {
    for (let py = free.y!.min; py <= free.y!.max; py += INCH / 4) {
      const at = fields.at({ ...fields.drawn, places: [{ x: px, y: py }] });
      const cost = weighWall(fields, at, startOf(at.own, x, y), null)!;
      if (!best || compareCosts(cost, best) < 0) best = cost;
    }
  }
  return best!;
}

const inTheMiddle = "niche shelf {\n at 12 to 17, 9 to 13\n size 9 x 7\n movement 0\n }";
const atTheEnd = "niche shelf {\n at 1 to 6, 9 to 13\n size 9 x 7\n movement 0\n }";
const overTheFloor = "niche shelf {\n at 12 to 16, 0 to 5\n size 9 x 7\n movement 0\n }";

describe("openings that may move", () => {
  for (const [where, niche] of Object.entries({ inTheMiddle, atTheEnd, overTheFloor })) {
    for (const [x, y] of [
      [0, 0],
      [-1.5, -0.75],
    ] as const) {
      it(`cost as much as the wall weighed whole, and no more than anywhere else (${where}, ${x} ${y})`, () => {
        const fields = fieldsOn(niche, "", WISHES);
        const { found, whole } = bothCosts(fields, x * INCH, y * INCH);
        assert.deepEqual(found, whole);
        const best = bestOfSteps(fieldsOn(niche, "", WISHES), x * INCH, y * INCH);
        assert.ok(compareCosts(found, best) <= 0, `${found.join(" ")} against ${best.join(" ")}`);
      });
    }
  }

  it("never add less than what they add at least", () => {
    for (const niche of [inTheMiddle, atTheEnd, overTheFloor]) {
      const fields = fieldsOn(niche, "", WISHES);
      const moving = movingOn(fields);
      const base = fields.base(fields.drawn.stop).fields;
      // Where all tiles round it are whole, the wall without it tells of no tile of its own.
      if (!fields.isPlain(0, base.own)) continue;
      const placed = moving.best(base, { x: 0, y: 0, first: 0 }, null)!;
      assert.ok(compareCosts(moving.least, placed.cost) <= 0);
    }
  });

  it("are kept apart where they may meet, and weighed together", () => {
    const two = `niche one {\n at 8 to 12, 9\n size 6 x 7\n movement 0\n }
  niche two {\n at 13 to 18, 9\n size 6 x 7\n movement 0\n }`;
    const fields = fieldsOn(two, "", WISHES);
    const { found, whole } = bothCosts(fields, 0, 0);
    assert.deepEqual(found, whole);
    assert.equal(fields.isThinned, false);
  });

  it("are found nowhere where they can't be kept apart", () => {
    const fields = fieldsOn(inTheMiddle, "", WISHES);
    const { fields: base } = fields.base(fields.drawn.stop);
    const own = { ...base.own, obstacles: [fields.reachOf(0)] };
    const at = { x: 0, y: 0, first: 0 };
    assert.equal(movingOn(fields).best({ ...base, own }, at, null), null);
  });
});
