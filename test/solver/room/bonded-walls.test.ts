import assert from "node:assert/strict";
import { moduleAcross } from "../../../src/solver/lattice.js";
import { acrossWords } from "../../../src/sheets/index.js";
import { bondedRoom, bondedText } from "./bonded-room.js";
import { measureRoom } from "../../../src/solver/room/index.js";
import { run } from "../../../src/engine.js";
import { ALONE, solveText } from "../../support/solve-text.js";
import { wrappedRoom } from "../../rooms/wrapped-room.js";

const missesOf = ({ plan, walls }: ReturnType<typeof bondedRoom>): readonly number[] =>
  measureRoom(plan, walls, plan.wishes).misses;

describe("walls whose bond is wanted to go on", () => {
  it("go on round the corner, where they did not without the wish", () => {
    const wishes = ["bond goes on"];
    assert.deepEqual(missesOf(bondedRoom({ wishes })), [0]);
    const { plan, walls } = bondedRoom({ wishes: ["equal ends"] });
    const [wish] = bondedRoom({ wishes }).plan.wishes;
    assert.ok(measureRoom(plan, walls, [wish!]).misses[0]! > 0);
  });

  it("say how they go on, and a plan that says so lays the same", () => {
    // The first wall then shows 3 1/2 in; the second, 59 5/8 in, is in balance with 2 1/2 in at both ends.
    const one = "tile centred at 29 1/16";
    const found = bondedRoom({ one, wishes: ["bond goes on", "equal ends"] });
    const across = found.walls[1]!.lays[0]!.across;
    assert.equal(acrossWords(across, "inch"), "across wrapped from one added");
    const words = "wrapped from one added";
    const stated = bondedRoom({ one, two: words, wishes: [] });
    const [own, again] = [found, stated].map(({ walls }) => walls[1]!.lays[0]!.lattice);
    assert.equal((own!.x - again!.x) % moduleAcross(own!), 0);
    assert.equal(own!.y, again!.y);
  });

  it("keep a start that is stated, and what it costs is told", () => {
    const two = "tile centred at 5 1/2";
    const { plan, walls, room } = bondedRoom({ one: "tile centred on wall", two });
    assert.equal(acrossWords(walls[1]!.lays[0]!.across, "inch"), `across ${two}`);
    assert.ok(measureRoom(plan, walls, plan.wishes).misses[0]! > 0);
    assert.equal(room!.capped, false);
    const { diagnostics } = run(bondedText({ one: "tile centred on wall", two }), ALONE);
    const [told] = diagnostics.filter(({ code }) => code === "wish/not-met");
    // The first tile shows 5 1/2 - 3 - 1/16 - 1/4 = 2 3/16 in; mirrored, 2 9/16 in is wanted.
    assert.equal(
      told?.message,
      "the wish `bond goes on` is not met: 3/8 in off in all; no layout was found that comes nearer",
    );
  });

  it("follow a bond that a plan states already", () => {
    const two = "mirrored from one";
    const { plan, walls } = bondedRoom({ two });
    assert.equal(acrossWords(walls[1]!.lays[0]!.across, "inch"), `across ${two}`);
    assert.deepEqual(measureRoom(plan, walls, plan.wishes).misses, [0]);
  });

  it("go on round all four corners of a room at once, or say what is missed", () => {
    const open = wrappedRoom().replace(/ +across .*\n/g, "");
    const text = open.replace("bed 1/16", "bed 1/16\nprefer {\n  bond goes on\n}");
    const { solved } = solveText(text);
    assert.deepEqual(missesOf(solved), [0]);
    const { diagnostics } = run(text, ALONE);
    assert.deepEqual(
      diagnostics.filter(({ code }) => code === "corner/bond-broken"),
      [],
    );
  });
});
