import assert from "node:assert/strict";
import { takenOf } from "../../src/service/taken.js";
import { run } from "../../src/engine.js";
import { Figures } from "../../src/service/figures.js";
import { hoverTile, hoverTrim, runWords } from "../../src/service/hover-stock.js";
import { exampleSource, exampleText } from "../support/examples.js";

describe("tiles and trims in figures", () => {
  const name = "three-walls.tileplan";
  const { plan, solved } = run(exampleText(name), exampleSource(name));
  const figures = new Figures("inch");

  it("tell a tile's face, lot and box, and its pieces on each wall", () => {
    const text = hoverTile(plan.tiles[0]!, solved, figures);
    assert.match(text, /face 5 7\/8 in x 2 7\/8 in, 5\/16 in thick/);
    assert.match(text, /varies by 1\/32- in/);
    assert.match(text, /88 pieces in a box/);
    for (const { wall, lays } of solved.walls) {
      assert.ok(text.includes(`${wall.name}: ${lays[0]!.pieces.count} pieces`), wall.name);
    }
  });

  it("tell how they are bought", () => {
    const text =
      'tile a {\n  face 6 x 3\n  thickness 1/4\n  directional\n  lot "7B"\n  price 0.85 a piece\n  breakage 2.5%\n  spares 6\n}\n' +
      "trim b {\n  face 6 x 2\n  thickness 1/4\n  price 3.1 a piece\n}\n";
    const bought = run(text, { file: "a", root: "", read: () => null });
    const [tile, trim] = [bought.plan.tiles[0]!, bought.plan.trims[0]!];
    const told = hoverTile(tile, bought.solved, figures);
    assert.match(told, /may not be turned {2}\nlot 7B, 0\.85 a piece, breakage 2\.5%, 6 spares$/);
    assert.match(hoverTrim(trim, bought.solved, figures), /\n\n3\.10 a piece$/);
  });

  it("tell a trim's runs: round openings and along free edges", () => {
    const text = hoverTrim(plan.trims[0]!, solved, figures);
    assert.match(text, /left, left: \d+ pieces/);
    assert.match(text, /back, top of sash: /);
  });

  it("tell of a run how many lengths stay uncut, and what the others are cut to", () => {
    const runs = solved.walls.flatMap(({ trims }) => trims);
    for (const each of runs) {
      const uncut = each.pieces.filter(({ whole }) => whole).length;
      assert.equal(runWords(each, figures).includes(`${uncut} uncut`), uncut > 0);
    }
  });
});

describe("a laid tile", () => {
  it("tells how many are needed and bought, from the sheet's own takeoff", () => {
    const { solved } = run(exampleText("back-wall.tileplan"), exampleSource("back-wall.tileplan"));
    const { tile, needed, cut, boxes } = takenOf(solved).tiles[0]!;
    const words = `needs ${needed} tiles, ${cut.length} of them cut up`;
    const told = hoverTile(tile, solved, new Figures("inch"));
    assert.ok(told.includes(words), told);
    if (boxes) assert.ok(told.includes(`${boxes.over} over`));
  });
});
