import assert from "node:assert/strict";
import type { ClusterLaid, RoomFound } from "../../src/solver/room/search-room.js";
import { Searches } from "../../src/solver/searches.js";

const laid = (missed: number): ClusterLaid => ({ walls: [], cost: [0, missed], isStrict: true });

const found = (...clusters: readonly (ClusterLaid | null)[]): RoomFound => ({
  walls: new Map(),
  weighed: 1,
  capped: false,
  clusters,
});

const [first, second] = [found(laid(1), null), found(laid(2))];

describe("the searches of a layout", () => {
  it("each begin with what the one in its turn found, as long as nothing else was found before", () => {
    const searches = new Searches({ searches: [first, second], place: 3 });
    assert.deepEqual(searches.next, { than: first, place: 3 });
    searches.add({ ...first, weighed: 9 });
    assert.deepEqual(searches.next, { than: second, place: 3 });
    searches.add(second);
    assert.equal(searches.next, null);
    assert.equal(searches.all.length, 2);
  });

  it("begin with nothing behind one that found another layout: their walls may have other places", () => {
    const searches = new Searches({ searches: [first, second], place: 1 });
    searches.add(found(laid(0), null));
    assert.equal(searches.next, null);
  });

  it("begin with nothing where walls are told not to be the same, or where nothing is known", () => {
    const searches = new Searches({ searches: [first, second], place: 1 });
    searches.part();
    assert.equal(searches.next, null);
    assert.equal(new Searches(null).next, null);
  });
});
