import assert from "node:assert/strict";
import { blockAt, outlineOf } from "../../src/preview/find-block.js";
import { boxRing } from "../../src/preview/find-spot.js";
import { lineOf, twoWalls, URI } from "./support/show-plan.js";

describe("the block with the cursor", () => {
  const picture = twoWalls(1);
  const back = picture.scene.walls[0]!;
  const blockOn = (words: string, character = 6, uri = URI) =>
    blockAt(picture, { uri, position: { line: lineOf(words), character } });

  it("is the innermost one", () => {
    assert.equal(blockOn("size 60")?.kind, "wall");
    assert.equal(blockOn("size 24")?.kind, "window");
    assert.equal(blockOn("bond running")?.kind, "lay");
    assert.equal(blockOn("left corner")?.name, "left");
  });

  it("is none outside blocks, in another file, or without a cursor", () => {
    assert.equal(blockOn("units inch"), null);
    assert.equal(blockOn("size 24", 6, "file:///other.tileplan"), null);
    assert.equal(blockAt(picture, null), null);
  });

  it("is marked where it stands on its wall", () => {
    const outline = (words: string) => outlineOf(picture.scene, blockOn(words)!);
    assert.deepEqual(outline("size 60"), { wall: back, rings: [back.bare] });
    assert.deepEqual(outline("size 24")?.rings, [boxRing(back.openings[0]!.box)]);
    assert.deepEqual(
      outline("bond running")?.rings,
      back.bands.find((band) => band.part === "field")!.rings,
    );
    const left = outline("left corner")!.rings;
    assert.ok(left.includes(back.hidden[0]!.ring), "the hidden strip belongs to the left edge");
  });

  it("is marked nowhere when the picture lacks it", () => {
    const block = { ...blockOn("size 24")!, name: "other" };
    assert.equal(outlineOf(picture.scene, block), null);
    assert.equal(outlineOf(picture.scene, { ...block, wall: null, kind: "tile" }), null);
  });
});
