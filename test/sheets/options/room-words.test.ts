import assert from "node:assert/strict";
import {
  layoutWords,
  outcomeWords,
  reasonWords,
  wishLabel,
} from "../../../src/sheets/options/room-words.js";
import { measureRoom, wishOutcomes } from "../../../src/solver/index.js";
import { exampleSource, exampleText } from "../../support/examples.js";
import { bench, TWO_LAYS } from "./bench.js";
import { run } from "../../../src/engine.js";

/** The example's room with wishes behind it: courses meet on its line; the niche's sill is 1/8 over a joint. */
const TEXT = `${exampleText("room.tileplan").replace("at 9 7/16, 35 3/16", "at 9 7/16, 35 5/16")}
prefer {
  courses meet
  whole courses at sill of soap
}
`;

describe("words of a room's layouts", () => {
  const { solved } = run(TEXT, exampleSource("room.tileplan"));
  const { asked } = solved.room!;
  const [meet, sill] = asked.wishes;

  it("say why a layout is told", () => {
    assert.match(reasonWords({ kind: "ranked" }, "inch"), /^what the plan has/);
    assert.equal(
      reasonWords({ kind: "first", wish: meet! }, "inch"),
      "the best with `courses meet` before all others",
    );
    assert.equal(
      reasonWords({ kind: "without", wish: sill! }, "inch"),
      "the best without `whole courses at sill of soap`",
    );
  });

  it("tell a wall's own wish with its wall", () => {
    assert.equal(wishLabel(meet!, "inch"), "courses meet");
    assert.equal(wishLabel({ ...meet!, wall: "back" }, "inch"), "back: courses meet");
  });

  it("say what becomes of each wish: all starts are stated, so nothing can come nearer", () => {
    const own = measureRoom(solved.plan, solved.walls, asked.wishes);
    const told = wishOutcomes(solved).map((each) => outcomeWords(each, own, asked));
    assert.equal(told[0], "met");
    assert.match(told[1]!, / off; no layout was found that comes nearer$/);
  });

  it("tell how a wall is laid", () => {
    const [, back] = solved.walls;
    assert.equal(
      layoutWords(back!, "inch"),
      "across tile centred on wall, up joint at 35 7/32, joint 1/16",
    );
    assert.equal(layoutWords({ ...back!, lays: [] }, "inch"), "not laid");
    const { solved: two } = bench(TWO_LAYS);
    assert.equal(
      layoutWords(two.walls[0]!, "inch"),
      "dado across full tile from left, up full course from bottom, joint 1/8; " +
        "field across full tile from left, up full course from bottom, joint 1/8",
    );
  });
});
