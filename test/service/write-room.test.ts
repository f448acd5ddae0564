import assert from "node:assert/strict";
import { writeRoom } from "../../src/service/write-room.js";
import { collidingRoom, OPEN_ROOM } from "../rooms/colliding-room.js";
import { panelText } from "../solver/free-wall-text.js";
import { edited } from "./plans.js";
import { stateOf } from "./state-of.js";

const ROOM = collidingRoom(OPEN_ROOM);

describe("a room's layout of a wall with several lays", () => {
  const openings = "niche n {\n at 8 to 12, 18 to 22\n size 8 x 8\n movement 1/8\n }";
  const bounds = (text: string) =>
    stateOf(text).outcome.solved.walls[0]!.lays.map(({ pieces }) => [...pieces.bounds]);
  const writtenIn = (text: string) => {
    const state = stateOf(text);
    return edited(text, writeRoom(state, state.outcome.solved)!);
  };

  it("has the place that a lay settled, and each block's start", () => {
    const text = panelText({ openings });
    const written = writtenIn(text);
    assert.doesNotMatch(written, / to /);
    assert.equal(written.match(/^ +across /gm)?.length, 2);
    assert.deepEqual(bounds(written), bounds(text));
    assert.equal(writtenIn(written), written);
  });

  it("leaves the start of what is set, and of a block whose tiles start otherwise", () => {
    const set = "across full tile from left\n up full course from bottom\n set courses 1 to 1";
    const list = "courses 2 of dado, rest of field";
    const lay = (lines: string) =>
      panelText({ openings }).replace(
        / {2}lay [^]*$/,
        `  lay dado {\n bond stack\n joint 1/8\n ${lines}\n }\n}\n`,
      );
    for (const text of [lay(set), lay(list)]) {
      const written = writtenIn(text);
      assert.doesNotMatch(written, /at 8 to/);
      assert.deepEqual(bounds(written), bounds(text));
    }
  });
});

describe("a room's layout of a block of which courses are set", () => {
  const text = panelText({
    wishes: "prefer {\n whole courses at top\n}",
    dado: "across full tile from left\n up full course from bottom\n set courses 1 to 1 joint 1/8",
  })
    .replace("courses 2", "")
    .replace("joint 1/8", "joint 1/8 to 1/4")
    .replace(/ {2}lay field \{[^}]*\}/, "");

  it("has the joint that the rest got, in place of the range", () => {
    const state = stateOf(text);
    const [, over] = state.outcome.solved.walls[0]!.lays;
    assert.ok(over!.lay.joint.min < over!.lay.joint.max);
    const written = edited(text, writeRoom(state, state.outcome.solved)!);
    assert.doesNotMatch(written, /joint 1\/8 to 1\/4/);
    assert.match(written, /set courses 1 to 1 joint 1\/8/);
    const again = stateOf(written).outcome.solved.walls[0]!.lays;
    assert.equal(again[1]!.joint, over!.joint);
    assert.deepEqual([...again[1]!.pieces.bounds], [...over!.pieces.bounds]);
  });
});

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
