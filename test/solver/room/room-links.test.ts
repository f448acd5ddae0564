import assert from "node:assert/strict";
import { wholePairs } from "../../../src/solver/room/corners.js";
import { linksOf } from "../../../src/solver/room/room-links.js";
import { wantingOf } from "../../../src/solver/room/wanting.js";
import { planOf } from "../../language/telling.js";

/** Three walls in a row; the last one's tile has another face. */
function linksFor(room: string, middle = ""): string[] {
  const tile = (name: string, face: string) => `tile ${name} {\n face ${face}\n thickness 1/4\n}\n`;
  const wall = (name: string, of: string, sides: string) =>
    `wall ${name} {\n size 40 x 40\n${sides}\nlay ${of} {\n bond stack\n joint 1/16\n}\n}\n`;
  const plan = planOf(
    tile("a", "6 x 3") +
      tile("b", "4 x 4") +
      room +
      wall("one", "a", "right corner two over") +
      wall("two", "a", `left corner one under\nright corner three over\n${middle}`) +
      wall("three", "b", "left corner two under"),
  );
  const wanting = wantingOf(plan, plan.wishes);
  return linksOf(wanting, plan.walls, wholePairs(plan.walls)).map(
    ({ a, b, wanted, place }) => `${a}-${b} ${wanted} ${place}`,
  );
}

describe("what is wanted of walls that meet", () => {
  it("are their courses at every corner, in the wish's rank", () => {
    assert.deepEqual(linksFor("prefer {\n few cuts\n courses meet\n}\n"), [
      "0-1 courses-meet 2",
      "1-2 courses-meet 2",
    ]);
  });

  it("is their bond only where both have tile of one face", () => {
    assert.deepEqual(linksFor("prefer {\n bond goes on\n}\n"), ["0-1 bond-goes-on 1"]);
  });

  it("is told of a wall's own corners where the wish is its own", () => {
    const own = "prefer {\n courses meet\n}";
    assert.deepEqual(linksFor("", own), ["0-1 courses-meet 1", "1-2 courses-meet 1"]);
    assert.deepEqual(linksFor("prefer {\n equal ends\n}\n"), []);
  });
});
