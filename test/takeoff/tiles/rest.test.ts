import assert from "node:assert/strict";
import { ALL_EDGES, EDGE } from "../../../src/takeoff/tiles/edges.js";
import { fits, partRest, type Rest } from "../../../src/takeoff/tiles/rest.js";

const tile: Rest = { tile: 0, box: { left: 0, bottom: 0, right: 100, top: 50 }, own: ALL_EDGES };
const pose = (width: number, height: number, needs: number) =>
  ({ turns: 0, width, height, needs }) as const;

describe("a piece that is cut from a rest", () => {
  it("fits when it is no larger and the rest has the edges", () => {
    assert.ok(fits(pose(100, 20, EDGE.bottom), tile));
    assert.ok(!fits(pose(101, 20, 0), tile));
    assert.ok(!fits(pose(40, 20, EDGE.left), { ...tile, own: EDGE.right }));
  });

  it("has to be as wide as the rest when it needs both its ends", () => {
    assert.ok(fits(pose(100, 20, EDGE.left | EDGE.right), tile));
    assert.ok(!fits(pose(99, 20, EDGE.left | EDGE.right), tile));
    assert.ok(!fits(pose(40, 49, EDGE.bottom | EDGE.top), tile));
  });

  it("lies at the edges it needs", () => {
    const { box } = partRest(tile, pose(40, 20, EDGE.right | EDGE.top), "upright", 3);
    assert.deepEqual(box, { left: 60, bottom: 30, right: 100, top: 50 });
  });

  it("leaves the edges of the tile to others when it needs none", () => {
    const middle = { ...tile, own: EDGE.left | EDGE.bottom };
    const { box } = partRest(middle, pose(40, 20, 0), "upright", 3);
    assert.deepEqual(box, { left: 60, bottom: 30, right: 100, top: 50 });
  });

  it("leaves two rests, parted by the kerf: an upright cut goes through first", () => {
    const { rests, kerfs } = partRest(tile, pose(40, 20, EDGE.left | EDGE.bottom), "upright", 3);
    assert.deepEqual(rests, [
      {
        tile: 0,
        box: { left: 43, bottom: 0, right: 100, top: 50 },
        own: EDGE.right | EDGE.bottom | EDGE.top,
      },
      { tile: 0, box: { left: 0, bottom: 23, right: 40, top: 50 }, own: EDGE.left | EDGE.top },
    ]);
    assert.deepEqual(kerfs, [
      { width: 3, length: 50 },
      { width: 3, length: 40 },
    ]);
  });

  it("or a level one", () => {
    const { rests } = partRest(tile, pose(40, 20, EDGE.left | EDGE.bottom), "level", 3);
    assert.deepEqual(
      rests.map(({ box }) => box),
      [
        { left: 43, bottom: 0, right: 100, top: 20 },
        { left: 0, bottom: 23, right: 100, top: 50 },
      ],
    );
  });

  it("leaves nothing where the saw takes all that is over", () => {
    const { rests, kerfs } = partRest(tile, pose(98, 50, EDGE.left), "upright", 3);
    assert.deepEqual(rests, []);
    assert.deepEqual(kerfs, [{ width: 2, length: 50 }]);
  });
});
