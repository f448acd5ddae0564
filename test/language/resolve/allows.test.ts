import assert from "node:assert/strict";
import { planOf, told, wallOf, wallText } from "../telling.js";

describe("an allow", () => {
  it("may stand at the top, in a tile, a trim, a wall, an opening and a lay", () => {
    const line = 'allow cut/sliver "why"';
    const wall = wallOf(
      `  ${line}\n  window s {\n    at 1, 1\n    size 2 x 2\n    ${line}\n  }\n  lay field {\n    bond stack\n    joint 0\n    ${line}\n  }`,
    );
    const [plan, tile] = [
      planOf(`${line}\n`),
      planOf(`tile t {\n face 1 x 1\n thickness 1\n ${line}\n}\n`),
    ];
    const [tileBlock] = tile.tiles;
    for (const block of [plan, tileBlock!, wall, wall.openings[0]!, wall.lays[0]!]) {
      const [allow, ...others] = block.allows;
      assert.deepEqual([allow!.code, allow!.reason, others.length], ["cut/sliver", "why", 0]);
    }
  });

  it("takes any code of two words: the rules know which there are", () => {
    assert.equal(planOf('allow some-day/not-yet "why"\n').allows[0]!.code, "some-day/not-yet");
  });

  it("needs a reason", () => {
    assert.deepEqual(told('allow cut/sliver " "\n'), [
      'plan/allow [" "] found no reason, wanted one in the quotes, such as "hidden behind the door"',
    ]);
    assert.deepEqual(told("allow cut/sliver\n"), [
      "syntax/unexpected [] found the end of the line, wanted a text in quotes",
    ]);
    assert.deepEqual(told(wallText('  allow sliver "why"')), [
      'syntax/unexpected ["why"] found `"why"`, wanted `/`',
    ]);
  });
});
