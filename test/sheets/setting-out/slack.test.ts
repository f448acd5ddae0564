import assert from "node:assert/strict";
import { leastSlack, type Measures, slackOf } from "../../../src/sheets/setting-out/slack.js";

const MEASURES: Measures = { face: 60, half: 30, sliver: 20, joint: 3 };

function slack(size: number, seen = size, measures: Partial<Measures> = {}) {
  return slackOf({ size, seen }, { ...MEASURES, ...measures });
}

describe("how far a border may move", () => {
  it("is until the cut goes under half, and until the tile is whole", () => {
    assert.deepEqual(slack(40), {
      shrink: { by: 10, then: "under-half" },
      grow: { by: 20, then: "joint-opens" },
    });
  });

  it("is until a sliver where the cut is under half, or nothing is held to half", () => {
    assert.deepEqual(slack(25).shrink, { by: 5, then: "sliver" });
    assert.deepEqual(slack(40, 40, { half: 0 }).shrink, { by: 20, then: "sliver" });
  });

  it("is unknown where the cut is a sliver already", () => {
    assert.equal(slack(19).shrink, null);
  });

  it("is until nothing is left where no rule holds", () => {
    assert.deepEqual(slack(19, 19, { half: 0, sliver: 0 }).shrink, { by: 19, then: "gone" });
  });

  it("is the joint's width at a whole tile, which nobody means to cut", () => {
    assert.deepEqual(slack(60), { shrink: { by: 3, then: "joint-closes" }, grow: null });
    assert.equal(slack(60, 60, { joint: 0 }).shrink, null);
  });

  it("is to half at a whole tile among scribed ones, which may be cut too", () => {
    assert.deepEqual(slack(60, 60, { joint: null }).shrink, { by: 30, then: "under-half" });
  });

  it("is judged by what is seen, and grows by what there is", () => {
    assert.deepEqual(slack(60, 50), { shrink: { by: 20, then: "under-half" }, grow: null });
  });

  it("is the least of several, and none where one has none", () => {
    assert.deepEqual(leastSlack([slack(40), slack(35), slack(50)]), {
      shrink: { by: 5, then: "under-half" },
      grow: { by: 10, then: "joint-opens" },
    });
    assert.deepEqual(leastSlack([slack(40), slack(60)]).grow, null);
    assert.deepEqual(leastSlack([]), { shrink: null, grow: null });
  });
});
