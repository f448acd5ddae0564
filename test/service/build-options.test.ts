import assert from "node:assert/strict";
import type { PieceGroup } from "../../src/drawing/index.js";
import { optionsOf, roomOptions, type SolvedWall, startedLays } from "../../src/solver/index.js";
import type { PlanOptions } from "../../src/service/index.js";
import { collidingRoom } from "../rooms/colliding-room.js";
import { panelText } from "../solver/free-wall-text.js";
import { edited, Plans, TURNS, wallPlan } from "./plans.js";
import { stateOf } from "./state-of.js";

async function optionsIn(text: string, wall: string | null = null): Promise<PlanOptions> {
  const plans = new Plans();
  return (await plans.service.options(plans.open(text), wall, TURNS))!;
}

/** How many pieces a picture shows. */
function drawnIn(groups: readonly PieceGroup[]): number {
  return groups.reduce((sum, { boxes, shapes }) => sum + boxes.length / 4 + shapes.length, 0);
}

const STATED = wallPlan(
  "    joint 1/16\n    across tile centred at 4\n    up full course from bottom\n",
);

const ROOM = collidingRoom();

describe("the layouts side by side", () => {
  it("are a wall's options with their pictures, the plan's own among them", async () => {
    const { groups, more } = await optionsIn(STATED);
    const { plan, solved } = stateOf(STATED).outcome;
    const found = optionsOf(plan, solved.walls[0]!)!.options;
    const [group] = groups;
    assert.deepEqual([groups.length, more, group!.wall, group!.title], [1, 0, "back", "Back wall"]);
    assert.match(group!.note, /^Its start is written down \([B-Z]\); left open, it would be A/);
    assert.deepEqual(
      group!.options.map(({ had }) => had),
      found.map(({ had }) => had),
    );
    for (const [i, { walls, letter }] of group!.options.entries()) {
      assert.equal(letter, String.fromCharCode(65 + i));
      assert.equal(drawnIn(walls[0]!.pieces), found[i]!.lay.pieces.count);
      assert.deepEqual([walls.length, walls[0]!.dimensions, walls[0]!.labels], [1, [], []]);
    }
  });

  it("are written as one edit that gives just that layout; the plan's own needs none", async () => {
    const [group] = (await optionsIn(STATED)).groups;
    const { plan, solved } = stateOf(STATED).outcome;
    const found = optionsOf(plan, solved.walls[0]!)!.options;
    for (const [i, { edits, had }] of group!.options.entries()) {
      if (had) {
        assert.deepEqual(edits, []);
        continue;
      }
      const [wall] = stateOf(edited(STATED, edits)).outcome.solved.walls;
      assert.equal(wall!.lays[0]!.choice, null);
      assert.deepEqual([...wall!.lays[0]!.pieces.bounds], [...found[i]!.lay.pieces.bounds]);
    }
  });

  it("are of each lay of a wall, and give just that layout when they are taken", async () => {
    for (const text of [
      panelText(),
      panelText({ dado: "across tile centred at 5", joint: "1/16" }),
    ]) {
      const { groups } = await optionsIn(text);
      assert.deepEqual(
        groups.map(({ title }) => title),
        ["back, the lay of dado", "back, the lay of field"],
      );
      const { plan, solved } = stateOf(text).outcome;
      const [wall] = solved.walls;
      for (const [k, laid] of startedLays(wall!).entries()) {
        const found = optionsOf(plan, wall!, laid)!.options;
        for (const [i, { edits, beside }] of groups[k]!.options.entries()) {
          const others = found[i]!.wall.lays.filter(({ lay }) => lay.name !== laid.lay.name);
          assert.equal(drawnIn(beside), others[0]!.pieces.count, "the other lay is told apart");
          const [taken] = stateOf(edited(text, edits)).outcome.solved.walls;
          const bounds = ({ lays }: SolvedWall) => lays.map(({ pieces }) => [...pieces.bounds]);
          assert.deepEqual(bounds(taken!), bounds(found[i]!.wall), `${k} ${i}`);
        }
      }
    }
  });

  it("write down what was left to the solver, too", async () => {
    const open = wallPlan("    joint 1/16 to 1/8\n");
    const own = (await optionsIn(open)).groups[0]!.options.find(({ had }) => had)!;
    const before = stateOf(open).outcome.solved.walls[0]!.lays[0]!;
    const after = stateOf(edited(open, own.edits)).outcome.solved.walls[0]!.lays[0]!;
    assert.equal(after.choice, null);
    assert.deepEqual([...after.pieces.bounds], [...before.pieces.bounds]);
  });

  it("are a room's where its walls are laid together, each with what becomes of the wishes", async () => {
    const { groups } = await optionsIn(ROOM);
    const { solved } = stateOf(ROOM).outcome;
    const layouts = roomOptions(solved);
    const [group] = groups;
    assert.deepEqual([groups.length, group!.wall, group!.title], [1, null, "The room"]);
    assert.equal(group!.options.length, layouts.length);
    const [first] = group!.options;
    assert.deepEqual(
      first!.wishes.map(({ words, isMet }) => [words, isMet]),
      [
        ["courses meet", true],
        ["whole courses at sill of sash", false],
      ],
    );
    assert.match(first!.wishes[1]!.told, / off; met, it would cost `courses meet` /);
    for (const [i, { edits, walls }] of group!.options.entries()) {
      assert.equal(walls.length, 2);
      const taken = stateOf(edited(ROOM, edits)).outcome.solved.walls;
      for (const [k, wall] of taken.entries()) {
        const wanted = layouts[i]!.solved.walls[k]!;
        assert.deepEqual([...wall.lays[0]!.pieces.bounds], [...wanted.lays[0]!.pieces.bounds]);
      }
    }
  });

  it("are a wall's own where one of a room is asked for", async () => {
    const { groups, wall } = await optionsIn(ROOM, "end");
    assert.deepEqual([wall, groups.length, groups[0]!.wall], ["end", 1, "end"]);
    assert.ok(groups[0]!.options.length > 1);
    assert.deepEqual((await optionsIn(ROOM, "gone")).groups, []);
  });

  it("say why there are none", async () => {
    const bare = wallPlan("").replace(/ {2}lay pressed \{[^}]*\}\n/, "");
    const [none] = (await optionsIn(bare)).groups;
    assert.deepEqual([none!.options, none!.note], [[], "No tile is laid on it."]);
    const large = STATED.replace("60 x 47 3/16", "60ft x 60ft");
    const [many] = (await optionsIn(large)).groups;
    assert.match(many!.note, /^More than 20000 pieces: too many/);
  });

  it("stop when they are called off, and let others in between walls", async () => {
    const second = STATED.slice(STATED.indexOf("wall back")).replace("wall back", "wall side");
    const plans = new Plans();
    const document = plans.open(STATED + second);
    let pauses = 0;
    const turns = {
      get cancelled() {
        return pauses > 1;
      },
      pause: () => {
        pauses++;
        return Promise.resolve();
      },
    };
    assert.equal(await plans.service.options(document, null, turns), null);
    assert.equal(pauses, 2);
    assert.equal((await plans.service.options(document, null, TURNS))!.groups.length, 2);
  });

  it("are of eight walls at most, and of any other when it is chosen", async () => {
    const wall = STATED.slice(STATED.indexOf("wall back")).replace("60 x 47 3/16", "12 x 9");
    const walls = Array.from({ length: 10 }, (_, i) => wall.replace("wall back", `wall w${i}`));
    const text = `use "stock.tileplan"\n${walls.join("")}`;
    const { groups, more } = await optionsIn(text);
    assert.deepEqual([groups.length, more], [8, 2]);
    assert.equal((await optionsIn(text, "w9")).groups[0]!.wall, "w9");
  });
});
