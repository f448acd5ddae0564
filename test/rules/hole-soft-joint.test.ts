import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

const CODE = "hole/soft-joint";

/** Over course 4 of tile 3 in high with joints of 1/8 in the soft joint lies from 12 3/8 to 12 1/2. */
const told = (hole: string) =>
  messages({ wall: hole, lay: "movement joint over course 4", size: "60 x 30" }, CODE);

describe("hole/soft-joint", () => {
  it("tells a hole that reaches a soft joint, and is silent a nanometre off", () => {
    assert.deepEqual(told("hole valve at 20, 14 1/2 - nm across 4"), [
      "valve lies on the soft joint over course 4, and what is fixed there bridges it; a soft joint clear of it is wanted",
    ]);
    assert.deepEqual(told("hole valve at 20, 14 1/2 across 4"), []);
  });

  it("tells a plate that does", () => {
    assert.deepEqual(told("hole valve at 20, 14 1/2 across 4 plate 5"), [
      "the plate of valve lies on the soft joint over course 4, and what is fixed there bridges it; a soft joint clear of it is wanted",
    ]);
  });

  it("is silent where the joint is hard", () => {
    assert.deepEqual(
      messages({ wall: "hole valve at 20, 12 across 4", size: "60 x 30" }, CODE),
      [],
    );
  });

  it("is a warning at the hole, of common practice, silenced in the lay or the wall", () => {
    const wall = "hole valve at 20, 12 across 4";
    const lay = "movement joint over course 4";
    const [found] = findings({ wall, lay, size: "60 x 30" }, CODE);
    assert.deepEqual([found!.severity, found!.source], ["warning", "common practice"]);
    const allow = `${lay}\nallow hole/soft-joint "sealed round"`;
    assert.equal(findings({ wall, lay: allow, size: "60 x 30" }, CODE)[0]!.allowed, "sealed round");
  });
});
