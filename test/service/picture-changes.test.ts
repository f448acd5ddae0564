import assert from "node:assert/strict";
import { Compared } from "../../src/service/compared.js";
import type { PictureChanges } from "../../src/service/index.js";
import { piecesIn, pictureChanges } from "../../src/service/picture-changes.js";
import { AFTER, BEFORE, oldPlan } from "./comparing.js";
import { stateOf } from "./state-of.js";

function changes(before: string, after: string): PictureChanges | null {
  return pictureChanges(stateOf(after), oldPlan(before), new Compared());
}

describe("the changed pieces of a picture", () => {
  it("are outlined on the walls that changed", () => {
    const told = changes(BEFORE, AFTER)!;
    assert.deepEqual(
      told.walls.map(({ wall }) => wall),
      ["back"],
    );
    assert.match(told.headline, /cut differently/);
    const counted = Number(/(\d+) pieces? cut differently/.exec(told.headline)![1]);
    assert.equal(told.walls[0]!.recut.length, counted);
  });

  it("are new and gone the other way round", () => {
    const narrower = BEFORE.replace("size 60 x", "size 44 x");
    const [there, back] = [changes(BEFORE, narrower)!, changes(narrower, BEFORE)!];
    const count = ({ walls }: PictureChanges, fate: "fresh" | "gone") =>
      walls.reduce((sum, wall) => sum + wall[fate].length, 0);
    assert.equal(count(there, "fresh"), count(back, "gone"));
    assert.equal(count(there, "gone"), count(back, "fresh"));
    assert.ok(count(there, "gone") + count(there, "fresh") > 0);
  });

  it("are none where nothing changed", () => {
    assert.deepEqual(changes(BEFORE, BEFORE)!.walls, []);
  });

  it("are not told while the text can't be understood whole", () => {
    assert.equal(changes(BEFORE, BEFORE.replace("size 60 x", "size 60")), null);
  });

  it("are told in words alone where there are too many to mark", () => {
    const [before, after] = [BEFORE, AFTER].map((text) =>
      text.replace("size 60 x 47", "size 600ft x 1200"),
    );
    const told = changes(before!, after!)!;
    assert.deepEqual(told.walls, []);
    assert.match(told.headline, /cut differently|moved|new/);
  });

  it("are counted of all walls", () => {
    const { outcome } = stateOf(BEFORE);
    const counts = outcome.solved.walls.map(({ lays }) => lays[0]!.pieces.count);
    assert.equal(piecesIn(outcome), counts[0]! + counts[1]!);
  });
});
