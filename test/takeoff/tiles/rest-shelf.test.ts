import assert from "node:assert/strict";
import type { Rest } from "../../../src/takeoff/tiles/rest.js";
import { RestShelf } from "../../../src/takeoff/tiles/rest-shelf.js";

const rest = (width: number, height: number, tile = 0): Rest => ({
  tile,
  box: { left: 0, bottom: 0, right: width, top: height },
  own: 1,
});

describe("a shelf of rests", () => {
  it("keeps those that are alike together, the smallest first", () => {
    const shelf = new RestShelf();
    for (const one of [rest(9, 9), rest(3, 2), rest(5, 5), rest(3, 2, 7)]) shelf.lay(one);
    assert.deepEqual(
      shelf.smallestOf(0, 9).map(({ area, rests }) => [area, rests.length]),
      [
        [6, 2],
        [25, 1],
        [81, 1],
      ],
    );
    assert.deepEqual(
      shelf.smallestOf(7, 1).map(({ area }) => area),
      [25],
    );
  });

  it("gives each rest once", () => {
    const shelf = new RestShelf();
    shelf.lay(rest(3, 2, 1));
    shelf.lay(rest(3, 2, 2));
    shelf.lay(rest(2, 3, 3));
    const [alike] = shelf.smallestOf(6, 9).filter(({ rests }) => rests.length === 2);
    assert.deepEqual([shelf.take(alike!).tile, shelf.take(alike!).tile].sort(), [1, 2]);
    assert.deepEqual(
      shelf.all().map(({ tile }) => tile),
      [3],
    );
    shelf.take(shelf.smallestOf(0, 1)[0]!);
    assert.deepEqual(shelf.all(), []);
  });

  it("still has what was put aside, but offers it no more", () => {
    const shelf = new RestShelf();
    shelf.lay(rest(9, 9));
    shelf.lay(rest(3, 2));
    shelf.setAside(({ box }) => box.right < 5);
    shelf.putAside(rest(1, 1));
    assert.deepEqual(
      shelf.smallestOf(0, 9).map(({ area }) => area),
      [81],
    );
    assert.equal(shelf.all().length, 3);
  });

  it("is copied with all that is on it", () => {
    const shelf = new RestShelf();
    shelf.lay(rest(9, 9));
    shelf.putAside(rest(1, 1));
    const copy = shelf.copy();
    copy.take(copy.smallestOf(0, 1)[0]!);
    assert.equal(copy.all().length, 1);
    assert.equal(shelf.all().length, 2);
  });
});
