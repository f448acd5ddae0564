import assert from "node:assert/strict";
import { wallPicture } from "../../../src/sheets/paper/wall-picture.js";
import { exampleGround, wallOf } from "./sheet-bench.js";

describe("the picture on a wall's page", () => {
  it("shows that wall alone, with its own findings", () => {
    const ground = exampleGround("faults.tileplan");
    const block = wallPicture(ground, wallOf(ground, "second"));
    assert.ok(block.kind === "picture");
    assert.deepEqual(
      block.scene.walls.map(({ name }) => name),
      ["second"],
    );
    assert.equal(block.caption, "Long tile, free end, seen from the room");
    assert.ok(block.scene.badges.length > 0);
  });
});
