import assert from "node:assert/strict";
import {
  optionsOf,
  type Score,
  type SolvedLay,
  type SolvedWall,
} from "../../../src/solver/index.js";
import type { Fix } from "../../../src/service/index.js";
import { panelText } from "../../solver/free-wall-text.js";
import { edited, Plans, wallPlan } from "../plans.js";
import { stateOf } from "../state-of.js";

const STATED = wallPlan(
  "    joint 1/16\n    across tile centred at 4\n    up full course from bottom\n",
);

/** The ways to start that are offered on a line, by a word of it. */
function offers(text: string, word = "bond stack", plans = new Plans()): Fix[] {
  const line = text.split("\n").findIndex((each) => each.includes(word));
  const at = { line, character: 4 };
  const fixes = plans.service.fixes(plans.open(text), { start: at, end: at });
  return fixes.filter(({ title }) => title.startsWith("Start as "));
}

function solvedOf(text: string): { wall: SolvedWall; lay: SolvedLay; scores: Score[] } {
  const { plan, solved } = stateOf(text).outcome;
  const [wall] = solved.walls;
  const { options } = optionsOf(plan, wall!)!;
  return { wall: wall!, lay: wall!.lays[0]!, scores: options.map(({ score }) => score) };
}

describe("taking an option", () => {
  it("offers the best three other ways to start, each with its smallest cut", () => {
    const found = offers(STATED);
    assert.equal(found.length, 3);
    for (const { title, mends } of found) {
      assert.match(
        title,
        /^Start as (tile|joint|full tile) .*, (full course|joint) .*: smallest cut .* x .*$/,
      );
      assert.equal(mends, null);
    }
  });

  it("writes it as the plan's start: it is then the one that the plan has", () => {
    for (const text of [
      STATED,
      wallPlan("    joint 1/16\n"),
      wallPlan("    joint 1/16 to 1/8\n"),
    ]) {
      const { plan, solved } = stateOf(text).outcome;
      const others = optionsOf(plan, solved.walls[0]!)!.options.filter(({ had }) => !had);
      for (const [i, { edits }] of offers(text).entries()) {
        const { lay } = solvedOf(edited(text, edits));
        assert.equal(lay.choice, null);
        assert.deepEqual([...lay.pieces.bounds], [...others[i]!.lay.pieces.bounds]);
      }
    }
  });

  it("has nothing better to offer once the best is taken", () => {
    const [best] = offers(STATED);
    const { lay, scores } = solvedOf(edited(STATED, best!.edits));
    assert.equal(lay.choice, null);
    assert.deepEqual(scores[0], solvedOf(STATED).scores[0]);
  });

  it("is offered within the lay's lines alone", () => {
    assert.deepEqual(offers(STATED, "left wall"), []);
    assert.ok(offers(STATED, "lay pressed").length > 0);
  });

  it("is offered for each lay of a wall, and written into that one", () => {
    const text = panelText({ field: "across tile centred at 5" });
    const titles = (at: string) => offers(text, at).map(({ title }) => title);
    const field = offers(text, "lay field");
    assert.ok(field.length > 0);
    assert.notDeepEqual(titles("lay field"), titles("lay dado"));
    for (const { edits } of field) {
      const written = edited(text, edits);
      assert.equal(written.split("lay field")[0], text.split("lay field")[0]);
    }
  });

  it("is not offered for more pieces than an editor waits for", () => {
    const small = STATED.replace("lay pressed", "lay dots").replace(
      "wall back",
      'tile dots "1/2 x 1/4" {\n  face 1/2 x 1/4\n  thickness 1/8\n}\nwall back',
    );
    assert.ok(solvedOf(small).lay.pieces.count < 20_000);
    assert.ok(offers(small).length > 0);
    assert.deepEqual(offers(small.replace("face 1/2 x 1/4", "face 1/4 x 1/4")), []);
  });

  it("tells the joint where the plan leaves a range", () => {
    for (const { title } of offers(wallPlan("    joint 1/16 to 1/8\n"))) {
      assert.match(title, /, joint [^,]*: smallest cut /);
    }
  });
});
