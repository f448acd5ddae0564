import assert from "node:assert/strict";
import { run } from "../../src/engine.js";
import { Figures } from "../../src/service/figures.js";
import { cutsByKind, hoverWall } from "../../src/service/hover-wall.js";
import { CUTS, cutOf } from "../../src/solver/index.js";
import { exampleSource, exampleText } from "../support/examples.js";

describe("a wall in figures", () => {
  const { solved } = run(
    exampleText("three-walls.tileplan"),
    exampleSource("three-walls.tileplan"),
  );

  it("counts each kind of cut, all of them together the cuts of the wall", () => {
    for (const { lays } of solved.walls) {
      const [lay] = lays;
      const counts = [...cutsByKind(lay!).matchAll(/(\d+) /g)].map(([, count]) => Number(count));
      const cuts = Array.from({ length: lay!.pieces.count }, (_, i) => cutOf(lay!.pieces, i));
      const cut = cuts.filter((each) => each !== CUTS[0]).length;
      assert.equal(
        counts.reduce((sum, count) => sum + count, 0),
        cut,
      );
    }
  });

  it("says why a wall is not laid", () => {
    const bare = run("wall a {\n  size 60 x 96\n}\n", { file: "a", root: "", read: () => null });
    assert.match(hoverWall(bare.solved.walls[0]!, new Figures("inch")), /no tile is laid on it/);
  });

  it("says how many pieces a wall asks for that is too large to be laid", () => {
    const text =
      "units m\ntile t {\n  face 1mm x 1mm\n  thickness 1mm\n}\nwall w {\n  size 100 x 100\n  lay t {\n    bond stack\n    joint 1mm\n  }\n}\n";
    const { solved: large } = run(text, { file: "a", root: "", read: () => null });
    assert.match(
      hoverWall(large.walls[0]!, new Figures("m")),
      /size 100 m x 100 m {2}\nnot laid: it asks for \d{10} pieces, and the most is \d+$/,
    );
  });
});
