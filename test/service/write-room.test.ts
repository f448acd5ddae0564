import assert from "node:assert/strict";
import { writeRoom } from "../../src/service/write-room.js";
import { ROOM } from "./fixes/take-room-option.test.js";
import { edited } from "./plans.js";
import { stateOf } from "./state-of.js";

describe("a room's layout written down", () => {
  const state = stateOf(ROOM);
  const edits = writeRoom(state, state.outcome.solved)!;
  const text = edited(ROOM, edits);

  it("has in place of each range the place that was taken, and starts for every wall", () => {
    assert.doesNotMatch(text, / to /);
    assert.equal(text.match(/^ +across /gm)?.length, 2);
    assert.equal(text.match(/^ +up /gm)?.length, 2);
  });

  it("is laid to the nanometre as before, and written no more", () => {
    const bounds = (each: typeof state) =>
      each.outcome.solved.walls.map(({ lays }) => [...lays[0]!.pieces.bounds]);
    const again = stateOf(text);
    assert.deepEqual(bounds(again), bounds(state));
    assert.equal(edited(text, writeRoom(again, again.outcome.solved)!), text);
  });
});
