import assert from "node:assert/strict";
import {
  andList,
  bondWords,
  edgeWords,
  openingWords,
  sidesWords,
  sideWords,
  startWords,
  titleOf,
  wallTitle,
} from "../../../src/sheets/paper/words.js";
import { wallText } from "../setting-out/plans.js";
import { benchGround, wallOf } from "./sheet-bench.js";

const SASH = "  window sash {\n    at 14, 9\n    size 8 x 7\n    movement 1/8\n  }";

describe("the words of a sheet", () => {
  const ground = benchGround(
    wallText({ bottom: "pan", right: "corner side under", inside: SASH }),
    wallText({ name: "side", left: "corner back over" }).replace(
      "right wall movement 1/8",
      "right free trim nose",
    ),
  );
  const [back, side] = [wallOf(ground).wall, wallOf(ground, "side").wall];

  it("call parts by their titles, or their names", () => {
    assert.equal(titleOf(back), "back wall");
    assert.equal(titleOf({ ...back, title: "" }), "back");
    assert.equal(wallTitle(ground, "side"), "side wall");
    assert.equal(wallTitle(ground, "nobody"), "nobody");
    assert.equal(openingWords(back.openings[0]!), "window sash");
  });

  it("tell what a side meets and by which joint", () => {
    assert.equal(edgeWords(ground, back.edges.bottom), "pan, soft joint 1/8 in");
    assert.equal(
      edgeWords(ground, back.edges.right),
      "corner, covered by the tile of side wall, soft joint 1/8 in",
    );
    assert.equal(
      edgeWords(ground, side.edges.left),
      "corner, covers the end of back wall, soft joint 1/8 in",
    );
    assert.equal(edgeWords(ground, side.edges.right), "free end with bullnose");
    assert.equal(edgeWords(ground, back.edges.left), "another wall, soft joint 1/8 in");
  });

  it("call a side what a setter calls it", () => {
    assert.equal(sideWords(back.edges.bottom), "pan");
    assert.equal(sideWords(back.edges.left), "left corner");
    assert.equal(sideWords(side.edges.right), "right end");
    assert.equal(sideWords({ ...back.edges.left, side: "bottom" }), "bottom");
  });

  it("tell the bond and the start", () => {
    assert.equal(bondWords({ kind: "stack" }), "stack bond");
    assert.equal(bondWords({ kind: "running", p: 1, q: 3 }), "running bond, 1/3 offset");
    const [lay] = wallOf(ground).lays;
    assert.equal(startWords(lay!, ground), "full tile from left; full course from bottom");
  });

  it("list sides in one order, and things with an and", () => {
    assert.equal(sidesWords(["top", "left"]), "left and top");
    assert.equal(andList([]), "");
    assert.equal(andList(["a"]), "a");
    assert.equal(andList(["a", "b", "c"]), "a, b and c");
  });
});
