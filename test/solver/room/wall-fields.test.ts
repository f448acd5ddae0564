import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { WallFields } from "../../../src/solver/room/wall-fields.js";
import { wantingOf } from "../../../src/solver/room/wanting.js";
import { askedOf, MOVING, roomWall, SASH } from "./small-room.js";

function fieldsOf(sash: string, share?: number): WallFields {
  const plan = askedOf(roomWall("back", sash, "across full tile from left"));
  const [wall] = plan.walls;
  return new WallFields(
    wantingOf(plan, []),
    wall!,
    wall!.lays[0]!,
    0,
    { cells: 0, ...(share && { share }) },
    1,
  );
}

describe("a wall's fields", () => {
  it("know which openings may move, and in which direction", () => {
    const fixed = fieldsOf(SASH);
    assert.deepEqual([fixed.isFree, fixed.free], [false, { x: [], y: [] }]);
    const moving = fieldsOf(MOVING);
    assert.deepEqual([moving.isFree, moving.free], [true, { x: [0], y: [] }]);
  });

  it("are drawn with what is free at the lower end of its range, and move with it", () => {
    const fields = fieldsOf(MOVING);
    const { drawn } = fields;
    const at = (x: number) => {
      const places = [{ x: x * NM_PER.inch, y: drawn.places[0]!.y }];
      return fields.at({ ...drawn, places }).own.boxes[0]!.left / NM_PER.inch;
    };
    assert.equal(fields.first.own.boxes[0]!.left / NM_PER.inch, 12);
    assert.deepEqual([at(12), at(17)], [12, 17]);
  });

  it("are bare without what may move, and know where all tiles round it are whole", () => {
    const fields = fieldsOf(MOVING);
    const { own } = fields.base(fields.drawn.stop).fields;
    assert.equal(own.boxes.length, 0);
    assert.equal(fields.isPlain(0, own), true);
    const low = fieldsOf("window sash {\n at 12 to 17, 2\n size 16 x 8\n movement 0\n }");
    const bare = low.base(low.drawn.stop).fields.own;
    assert.deepEqual([low.roundOf(0, "x", bare), low.roundOf(0, "y", bare)], ["nothing", "ends"]);
  });

  it("tell of all that an opening may take", () => {
    const { left, right, bottom, top } = fieldsOf(MOVING).reachOf(0);
    assert.deepEqual(
      [left, right, bottom, top].map((nm) => nm / NM_PER.inch),
      [12, 33, 13, 21],
    );
  });

  it("take as many places as a search may look at, and of a part of its effort that part", () => {
    const all = Array.from({ length: 1000 }, (_, i) => i);
    const taken = (share: number | undefined, most: number): number =>
      fieldsOf(MOVING, share).some(all, most).length;
    assert.deepEqual([taken(undefined, 400), taken(1, 400), taken(0.5, 400)], [400, 400, 200]);
    // Some are looked at whatever the share, but never more than without it.
    assert.deepEqual([taken(0.01, 400), taken(0.01, 15)], [64, 15]);
  });
});
