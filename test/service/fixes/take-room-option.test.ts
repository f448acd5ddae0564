import assert from "node:assert/strict";
import type { Fix } from "../../../src/service/index.js";
import { collidingRoom, OPEN_ROOM } from "../../rooms/colliding-room.js";
import { wrappedRoom } from "../../rooms/wrapped-room.js";
import { edited, Plans } from "../plans.js";
import { stateOf } from "../state-of.js";

const ROOM = collidingRoom(OPEN_ROOM);

function offers(text: string, word: string): Fix[] {
  const line = text.split("\n").findIndex((each) => each.includes(word));
  const at = { line, character: 4 };
  const plans = new Plans();
  return plans.service.fixes(plans.open(text), { start: at, end: at });
}

/** Where everything of a solved room stands. */
function layoutOf(text: string) {
  return stateOf(text).outcome.solved.walls.map(({ wall, lays: [lay] }) => ({
    places: wall.openings.map(({ at }) => at),
    top: wall.size.up,
    joint: lay!.joint,
    bounds: [...lay!.pieces.bounds],
  }));
}

describe("taking a room's layout", () => {
  const write = "Write the room's layout down: starts, joint and places";

  it("writes every start, the joint, the places and the heights as one edit that changes no piece", () => {
    const fix = offers(ROOM, "courses meet").find(({ title }) => title === write)!;
    const written = edited(ROOM, fix.edits);
    assert.doesNotMatch(written, / to /);
    assert.equal(written.match(/ across /g)!.length, 2);
    assert.equal(written.match(/ up /g)!.length, 2);
    assert.deepEqual(layoutOf(written), layoutOf(ROOM));
    const { solved } = stateOf(written).outcome;
    assert.deepEqual(
      solved.walls.map(({ lays: [lay] }) => lay!.choice),
      [null, null],
    );
  });

  it("offers the layout in which a wish that isn't met is, and what it costs", () => {
    const fix = offers(ROOM, "courses meet").find(({ title }) => title.startsWith("Lay the room"))!;
    assert.match(
      fix.title,
      /^Lay the room with `whole courses at sill of sash` first: it costs `courses meet` \(.* off in all\)/,
    );
    const { solved } = stateOf(edited(ROOM, fix.edits)).outcome;
    const [sash] = solved.walls[0]!.region.takeaways;
    const { y, joint, face } = solved.walls[0]!.lays[0]!.lattice;
    const module = face.up + joint;
    const into = (sash!.box.bottom - y) % module;
    assert.ok(into === 0 || into >= face.up, `${into}`);
  });

  it("offers nothing away from the wishes", () => {
    assert.deepEqual(
      offers(ROOM, "face 6 x 3").filter(({ title }) => title.includes("room")),
      [],
    );
  });

  it("writes how the bond goes on where that was chosen, and the same room is laid", () => {
    const prefer = "prefer {\n  bond goes on\n  equal ends\n}";
    const open = wrappedRoom({ bond: "running 1/2" }).replace(/ +across .*\n/g, "");
    const text = open.replace("bed 1/16", `bed 1/16\n${prefer}`);
    const [fix] = offers(text, "bond goes on").filter(({ title }) => title === write);
    const written = edited(text, fix!.edits);
    assert.match(written, /across (?:wrapped|mirrored) from /);
    assert.deepEqual(layoutOf(written), layoutOf(text));
  });
});
