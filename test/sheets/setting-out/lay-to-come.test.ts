import assert from "node:assert/strict";
import {
  isAllSet,
  isOverSet,
  laysToCome,
  layToCome,
} from "../../../src/sheets/setting-out/lay-to-come.js";
import { laid, wallText } from "./plans.js";

describe("the lay that a wall is set out for", () => {
  it("is its main one where nothing is set", () => {
    const { wall, lay } = laid(wallText());
    assert.equal(layToCome(wall), lay);
    assert.deepEqual(laysToCome(wall), [lay]);
    assert.equal(isOverSet(wall, lay), false);
  });

  it("is what goes on over the courses that are set, over all of several stretches", () => {
    const { wall } = laid(wallText({ set: "courses 1 to 2\n    set courses 3 to 4 top 16 3/4" }));
    const rest = layToCome(wall)!;
    assert.equal(rest, wall.lays[2]);
    assert.deepEqual(laysToCome(wall), [rest]);
    assert.equal(isOverSet(wall, rest), true);
    assert.equal(isAllSet(rest), false);
  });

  it("is the last that was set where nothing is to come", () => {
    const { wall } = laid(wallText({ set: "courses 1 to 6" }));
    assert.equal(layToCome(wall), wall.lays[0]);
    assert.equal(isAllSet(wall.lays[0]!), true);
  });

  it("is none where nothing is laid", () => {
    assert.equal(layToCome({ lays: [] }), null);
  });
});
