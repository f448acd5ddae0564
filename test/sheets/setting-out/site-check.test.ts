import assert from "node:assert/strict";
import { stopsFrom } from "../../../src/sheets/setting-out/site-check.js";
import type { Slack } from "../../../src/sheets/setting-out/slack.js";

const SLACK: Slack = {
  shrink: { by: 5, then: "sliver" },
  grow: { by: 8, then: "joint-opens" },
};

describe("stopsFrom", () => {
  it("stops at less where a border comes nearer to the line over the tile that it cuts", () => {
    // A corner at 0, its tile to the right of it, the line at 50.
    assert.deepEqual(stopsFrom(50, { at: 0, tile: 1 }, SLACK), {
      planned: 50,
      least: { at: 45, then: "sliver" },
      most: { at: 58, then: "joint-opens" },
    });
  });

  it("stops at more where the border stands between the line and that tile", () => {
    // The head of a window at 90, its tile over it, the line at 10.
    assert.deepEqual(stopsFrom(10, { at: 90, tile: 1 }, SLACK), {
      planned: 80,
      least: { at: 72, then: "joint-opens" },
      most: { at: 85, then: "sliver" },
    });
  });

  it("has no stop where there is no slack to know, or where the border would pass the line", () => {
    const free = stopsFrom(50, { at: 0, tile: 1 }, { shrink: null, grow: null });
    assert.deepEqual([free.least, free.most], [null, null]);
    const near = stopsFrom(3, { at: 0, tile: 1 }, SLACK);
    assert.deepEqual([near.least, near.most], [null, { at: 11, then: "joint-opens" }]);
  });
});
