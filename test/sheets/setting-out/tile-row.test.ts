import assert from "node:assert/strict";
import {
  acrossRow,
  restBefore,
  restPast,
  secondBefore,
  secondPast,
  upRow,
} from "../../../src/sheets/setting-out/tile-row.js";
import { laid, wallText } from "./plans.js";

// Tiles of 40 with joints of 2: 0 to 40, 42 to 82, 84 to 124.
const ROW = { origin: 0, face: 40, joint: 2 };

describe("a row of tiles", () => {
  it("leaves what lies beyond a border of the tile that it cuts", () => {
    assert.equal(restPast(ROW, 50), 32);
    assert.equal(restPast(ROW, 42), 40);
    assert.equal(restPast(ROW, -1), 40);
    assert.equal(restBefore(ROW, 50), 8);
    assert.equal(restBefore(ROW, 82), 40);
  });

  it("leaves a whole tile where the border runs in a joint", () => {
    assert.equal(restPast(ROW, 41), 40);
    assert.equal(restBefore(ROW, 83), 40);
  });

  it("has its second tile past the one that a border leaves, whole or cut", () => {
    assert.equal(secondPast(ROW, 50), 84);
    assert.equal(secondPast(ROW, 42), 84);
    assert.equal(secondPast(ROW, 41), 84);
    assert.equal(secondBefore(ROW, 100), 82);
    assert.equal(secondBefore(ROW, 124), 82);
  });

  it("is a course, shifted by its bond, or all courses", () => {
    const { lay } = laid(wallText({ bond: "running 1/2" }));
    const one = acrossRow(lay.lattice, 1);
    assert.equal(acrossRow(lay.lattice, 2).origin - one.origin, (one.face + one.joint) / 2);
    assert.equal(upRow(lay.lattice).origin, lay.courses[0]!.bottom);
  });
});
