import assert from "node:assert/strict";
import { closes, roomOrder } from "../../../src/drawing/room/room-order.js";
import { outsideText } from "../../rooms/outside-text.js";
import { wrappedRoom } from "../../rooms/wrapped-room.js";
import { solveText } from "../../support/solve-text.js";

const orderOf = (text: string): string[][] =>
  roomOrder(solveText(text).solved.walls).map((group) => group.map(({ wall }) => wall.name));

describe("the order of walls round a room", () => {
  it("runs from left to right round corners, inside and outside", () => {
    assert.deepEqual(orderOf(outsideText()), [["back", "pier"]]);
    const turned = outsideText().replace(/(wall back [^]*?\n\})\n(wall pier [^]*)/, "$2$1\n");
    assert.deepEqual(orderOf(turned), [["back", "pier"]]);
  });

  it("begins a closed room with its first wall of the plan", () => {
    assert.deepEqual(orderOf(wrappedRoom({ declared: ["three", "one", "two", "four"] })), [
      ["three", "four", "one", "two"],
    ]);
  });

  it("leaves a wall apart that no corner joins, or of which the other says otherwise", () => {
    const text = outsideText().replace(/left outside back.*/, "left wall");
    assert.deepEqual(orderOf(text), [["back"], ["pier"]]);
  });

  it("closes where the last wall meets the first one, and not where an end is free", () => {
    const groupsOf = (text: string) => roomOrder(solveText(text).solved.walls);
    assert.deepEqual(groupsOf(wrappedRoom()).map(closes), [true]);
    assert.deepEqual(groupsOf(outsideText()).map(closes), [false]);
    assert.equal(closes([]), false);
  });
});
