import assert from "node:assert/strict";
import { matchHoles, matchOpenings, matchPlans } from "../../src/compare/match-plan.js";
import { edited, told, WALL } from "./wall.js";

function namesOf(
  changes: readonly { before: { name: string } | null; after: { name: string } | null }[],
) {
  return changes.map(({ before, after }) => [before?.name ?? null, after?.name ?? null]);
}

describe("matchPlans", () => {
  const before = told(WALL).solved;

  it("recognises a renamed wall by what is on it", () => {
    const after = told(edited(WALL, ["wall back", "wall rear"])).solved;
    const { walls } = matchPlans(before, after);
    assert.deepEqual([walls.length, walls[0]?.before?.wall.name], [1, "back"]);
    assert.equal(walls[0]?.after?.wall.name, "rear");
  });

  it("takes a wall that shares little for another", () => {
    const other = edited(
      WALL,
      ['wall back "Back wall"', 'wall rear "Rear wall"'],
      ["size 41 3/8 x 22 7/8", "size 50 x 40"],
      ["niche shelf", "niche ledge"],
    );
    assert.equal(matchPlans(before, told(other).solved).walls.length, 2);
  });

  it("looks at tiles that are laid, and at no others of a stock list", () => {
    const stock = `${WALL}tile spare {\n  face 6 x 6\n  thickness 1/4\n}\n`;
    const { tiles, trims } = matchPlans(before, told(stock).solved);
    assert.deepEqual(namesOf(tiles), [["field", "field"]]);
    assert.deepEqual(trims, []);
  });
});

describe("matchOpenings", () => {
  const [wall] = told(WALL).solved.walls;
  const [niche] = wall!.wall.openings;

  it("recognises an opening of another name by its place or size", () => {
    assert.deepEqual(namesOf(matchOpenings([niche!], [{ ...niche!, name: "ledge" }])), [
      ["shelf", "ledge"],
    ]);
  });

  it("takes one of another kind for another", () => {
    assert.equal(matchOpenings([niche!], [{ ...niche!, kind: "window" }]).length, 2);
  });

  it("does the same for holes", () => {
    const hole = {
      name: "spout",
      at: { x: 1, y: 2 },
      across: 3,
      plate: null,
      origin: niche!.origin,
    };
    assert.deepEqual(namesOf(matchHoles([hole], [{ ...hole, name: "arm" }])), [["spout", "arm"]]);
    assert.equal(
      matchHoles([hole], [{ ...hole, name: "arm", at: { x: 9, y: 9 }, across: 4 }]).length,
      2,
    );
  });
});
