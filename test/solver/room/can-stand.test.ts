import assert from "node:assert/strict";
import fc from "fast-check";
import { canStand } from "../../../src/solver/room/can-stand.js";
import { isApart, type WallFields } from "../../../src/solver/room/wall-fields.js";
import { fieldsOn, INCH } from "./small-room.js";

/** A niche of 9 x 7 in that may move 5 in across and 8 up, on a wall with such holes. */
function nicheBeside(...holes: string[]): WallFields {
  const niche = "niche shelf {\n at 12 to 17, 9 to 17\n size 9 x 7\n movement 0\n }";
  return fieldsOn([niche, ...holes].join("\n"), "");
}

describe("an opening that may move in both directions", () => {
  it("can stand at a height at which some place across is clear", () => {
    // From 9 up to 16 in the niche is under the hole, which begins at 18.
    const fields = nicheBeside("hole valve at 19, 20 across 4");
    assert.ok(canStand(fields, 0, "y", 9 * INCH));
    assert.ok(canStand(fields, 0, "y", 11 * INCH));
    // Any higher it would pass it, and everywhere across it is over 17 to 21 in.
    assert.ok(!canStand(fields, 0, "y", 11 * INCH + 1));
  });

  it("may slip past on either side, up to the very edge", () => {
    // At 17 in the niche begins where this hole ends.
    const clear = nicheBeside("hole valve at 15, 20 across 4");
    assert.ok(canStand(clear, 0, "y", 12 * INCH));
    const further = nicheBeside("hole valve at 15.001, 20 across 4");
    assert.ok(!canStand(further, 0, "y", 12 * INCH));
  });

  it("can stand wherever one of all its places in the other direction is apart from the rest", () => {
    // Where the niche is drawn it has to be clear of them: else they are told and left out.
    const place = fc.integer({ min: 8, max: 30 });
    const hole = fc
      .tuple(place, place, fc.integer({ min: 1, max: 2 }))
      .map(([x, y, size]) => `at ${x}, ${y} across ${2 * size}`);
    const axis = fc.constantFrom("x" as const, "y" as const);
    fc.assert(
      fc.property(fc.array(hole, { maxLength: 4 }), axis, fc.nat(5), (holes, direction, step) => {
        const fields = nicheBeside(...holes.map((words, k) => `hole h${k} ${words}`));
        const { own } = fields.base(fields.drawn.stop).fields;
        const free = fields.wall.openings[0]!.free;
        const given = free[direction]!.min + step * INCH;
        const [other, range] =
          direction === "x" ? (["y", free.y!] as const) : (["x", free.x!] as const);
        let isClear = false;
        // All edges are whole inches, so that no other place is clear where none of these is.
        for (let at = range.min; at <= range.max; at += INCH / 2) {
          const box = fields.boxAt(0, {
            ...fields.drawn.places[0]!,
            [direction]: given,
            [other]: at,
          });
          isClear ||= isApart(box, own, []);
        }
        assert.equal(canStand(fields, 0, direction, given), isClear);
      }),
      { numRuns: 60 },
    );
  });
});
