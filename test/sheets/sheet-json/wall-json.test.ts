import assert from "node:assert/strict";
import { settingOutJson } from "../../../src/sheets/sheet-json/wall-json.js";
import { laid, wallText } from "../setting-out/plans.js";

describe("the setting out of a wall as JSON", () => {
  const inside = [
    "  window sash {\n    at 14, 9\n    size 10 x 7\n    movement 1/8\n  }",
    "  hole valve at 30, 6 across 1",
  ].join("\n");
  const { plan, wall } = laid(wallText({ inside }));
  const json = JSON.parse(JSON.stringify(settingOutJson(plan, wall))) as Record<string, object[]>;

  it("tells lengths in millimetres, exact to the nanometre", () => {
    assert.deepEqual(json.lays, [
      { tile: "field", face: [101.6, 101.6], thickness: 9.525, joint: 3.175, bond: "stack" },
    ]);
    assert.deepEqual(json.courses![0], {
      ...{ number: 1, bottom: 3.175, top: 104.775, cut: false },
      ...{ left: 101.6, middle: 101.6, right: 101.6, meets: [] },
    });
  });

  it("tells the openings and holes that a course meets", () => {
    const meets = json.courses!.map((course) => (course as { meets: object[] }).meets);
    assert.deepEqual(meets[1], [{ hole: "valve" }]);
    assert.deepEqual(meets[2], [{ opening: "sash", place: "under", rest: 12.7 }]);
  });

  it("tells lines, checks with their stops, and marks", () => {
    assert.deepEqual(
      json.levelLines!.map((line) => (line as { at: number }).at),
      [0, 107.95],
    );
    assert.deepEqual(json.checks![1], {
      ...{ measure: "side", side: "right", at: null, planned: 73.025 },
      ...{ least: { at: 57.15, then: "under-half" }, most: { at: 107.95, then: "joint-opens" } },
    });
    const { up } = json.marks as unknown as { up: object[] };
    assert.deepEqual(up[0], { at: 0, what: "level line" });
  });
});
