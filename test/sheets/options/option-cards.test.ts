import assert from "node:assert/strict";
import { roomCards, wallCards } from "../../../src/sheets/options/option-cards.js";
import { optionsOf, roomOptions } from "../../../src/solver/index.js";
import { run } from "../../../src/engine.js";
import { exampleSource, exampleText } from "../../support/examples.js";
import { bench, STATED } from "./bench.js";

describe("options as cards", () => {
  it("have a wall's key numbers, those of its laid pieces", () => {
    const { solved, wall, options } = bench(STATED);
    const found = optionsOf(solved.plan, wall)!;
    const cards = wallCards(solved, wall, found);
    assert.equal(cards.length, options.length);
    for (const [i, { letter, figures, starts, wishes }] of cards.entries()) {
      const told = new Map(figures);
      const { lay, score } = options[i]!;
      const cut = lay.pieces.cut.filter((each) => each !== 0).length;
      assert.equal(letter, "ABCDEFGH"[i]);
      assert.deepEqual([starts.length, wishes], [1, []]);
      assert.equal(told.get("slivers"), `${score.slivers}`);
      assert.equal(told.get("cut pieces"), `${cut}`);
      assert.equal(told.has("courses meet"), false);
      assert.equal(told.has("joint over its least"), false);
    }
    // By hand: the third tile begins at 1/8 + 2 x 6 1/8 = 12 3/8, the niche takes from 12 15/16 on: 9/16 is left of it,
    // in courses of 3 beside it.
    const own = cards.find(({ standing }) => standing.startsWith("what the plan has"))!;
    assert.equal(new Map(own.figures).get("smallest cut"), "9/16 in x 3 in");
  });

  it("hold a wall's courses against the other walls as they are", () => {
    const name = "room.tileplan";
    const { solved } = run(exampleText(name), exampleSource(name));
    const back = solved.walls[1]!;
    const found = optionsOf(solved.plan, back)!;
    const cards = wallCards(solved, back, found);
    for (const [i, { figures }] of cards.entries()) {
      const isOnLine =
        (found.options[i]!.lay.lattice.y - back.lays[0]!.lattice.y) %
          (back.lays[0]!.lattice.face.up + back.lays[0]!.joint) ===
        0;
      const told = new Map(figures).get("courses meet");
      assert.equal(told, isOnLine ? "at 2 of 2 corners" : "at 0 of 2 corners");
    }
  });

  it("have what becomes of each wish in a room's layouts, with its price in the plan's own", () => {
    const name = "room.tileplan";
    const text = exampleText(name).replace("at 9 7/16, 35 3/16", "at 9 7/16, 35 5/16");
    const wished = `${text}\nprefer {\n  courses meet\n  whole courses at sill of soap\n}\n`;
    const { solved } = run(wished, exampleSource(name));
    const [own] = roomCards(solved, roomOptions(solved));
    assert.deepEqual(
      own!.wishes.map(({ words, isMet }) => [words, isMet]),
      [
        ["courses meet", true],
        ["whole courses at sill of soap", false],
      ],
    );
    assert.match(own!.wishes[1]!.told, /no layout was found that comes nearer/);
    assert.equal(own!.starts.length, 4);
    assert.match(own!.starts[1]!, /^back: across tile centred on wall/);
    assert.equal(new Map(own!.figures).get("courses meet"), "at 3 of 3 corners");
    assert.deepEqual(roomCards(run(text, exampleSource(name)).solved, []), []);
  });
});
