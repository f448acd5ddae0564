import assert from "node:assert/strict";
import { factoryEdges, ownEdges } from "../../../src/takeoff/cuts/factory-edges.js";
import { pieceId } from "../../../src/solver/index.js";
import { mitredText } from "../../rooms/mitred-text.js";
import { outsideText } from "../../rooms/outside-text.js";
import { ANY, randomSketch } from "../../support/random-sketch.js";
import { cutWall } from "../../support/cut-wall.js";
import { facingEdges } from "../../support/facing-edges.js";
import { printSketch } from "../../support/print-sketch.js";
import { takeText } from "../../support/takeoff-text.js";

const PLANS = 80;

describe("the edges of a piece that have to be its tile's own", () => {
  it("are those at field joints; the ones at the wall's sides may be cut", () => {
    const { piece } = cutWall({ size: "254 x 130" });
    assert.deepEqual(piece("B-01-03").factory, ["left", "top"]);
    assert.deepEqual(piece("B-02-03").factory, ["left", "bottom", "top"]);
    assert.deepEqual(piece("B-03-03").factory, ["left", "bottom"]);
    assert.deepEqual(piece("B-03-02").factory, ["left", "right", "bottom"]);
    assert.deepEqual(piece("B-03-01").factory, ["right", "bottom"]);
  });

  it("are those along a free side without trim, too", () => {
    const { piece } = cutWall({ size: "204 x 130", wall: ["left free"] });
    assert.deepEqual(piece("B-03-01").factory, ["left", "right", "bottom"]);
  });

  it("aren't those under trim", () => {
    const trimmed = cutWall(
      { size: "254 x 130", wall: ["left free trim nose"] },
      { plan: ["trim nose {\nface 100 x 20\nthickness 8\n}"] },
    );
    assert.deepEqual(trimmed.piece("B-03-01").factory, ["right", "bottom"]);
  });

  it("are those that show over an outside corner, and none under one or in a mitre", () => {
    const ends = (text: string) => {
      const [back, pier] = takeText(text).taken.walls;
      // The top course is ripped, so that its end pieces are told.
      const own = (pieces: typeof back, label: string) =>
        pieces!.pieces.find((piece) => piece.label.endsWith(label))!.factory;
      return [own(back, "-08-10"), own(pier, "-08-01")];
    };
    assert.deepEqual(ends(outsideText()), [
      ["left", "right", "bottom"],
      ["right", "bottom"],
    ]);
    assert.deepEqual(ends(mitredText()), [
      ["left", "bottom"],
      ["right", "bottom"],
    ]);
  });

  it("are those on the upright part of a free side that leans further up", () => {
    const { piece } = cutWall({
      size: "204 x 104",
      wall: [
        "right free measured 0: -2, 50: -2, 104: 10",
        "niche shelf {\nat 110, 10\nsize 20 x 20\n}",
      ],
    });
    assert.ok(piece("B-01-02").factory.includes("right"));
  });

  it("are among the piece's own edges", () => {
    const { laid, wall, piece } = cutWall({ size: "254 x 130" });
    const { index, cut } = piece("B-03-03");
    assert.deepEqual(ownEdges(cut.box, laid), ["left", "bottom"]);
    assert.deepEqual(factoryEdges(wall, laid, index), ["left", "bottom"]);
  });

  it("are told for each of two walls that share their pieces, by its own sides", () => {
    const { laid, wall, piece } = cutWall({ size: "204 x 130", wall: ["left free"] });
    const covered = { ...wall.wall.edges, left: wall.wall.edges.right };
    const other = { ...wall, wall: { ...wall.wall, edges: covered } };
    const { index } = piece("B-03-01");
    assert.deepEqual(factoryEdges(wall, laid, index), ["left", "right", "bottom"]);
    assert.deepEqual(factoryEdges(other, laid, index), ["right", "bottom"]);
  });

  it(`hold wherever two pieces face each other across a joint, on ${PLANS} random plans`, () => {
    let edges = 0;
    for (let seed = 0; seed < PLANS; seed++) {
      const text = printSketch(randomSketch(seed, ANY), "mm");
      const { solved, taken } = takeText(text);
      solved.walls.forEach((wall, n) => {
        const byId = new Map(taken.walls[n]!.pieces.map((piece) => [piece.id, piece]));
        for (const laid of wall.lays) {
          for (const [i, side] of facingEdges(laid)) {
            const piece = byId.get(pieceId(laid, i));
            if (!piece) continue;
            edges++;
            assert.ok(piece.factory.includes(side), `seed ${seed}: ${piece.id} ${side}\n${text}`);
          }
        }
      });
    }
    assert.ok(edges > 20 * PLANS, `${edges} edges`);
  });
});
