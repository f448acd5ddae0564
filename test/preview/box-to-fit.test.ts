import assert from "node:assert/strict";
import { placeOfFinding, boxToFit, roomOf } from "../../src/preview/box-to-fit.js";
import { boundsOfPoints } from "../../src/drawing/index.js";
import { exampleSource, exampleText } from "../support/examples.js";
import { planPicture } from "./support/plan-picture.js";
import { twoWalls } from "./support/show-plan.js";

describe("what fit shows whole", () => {
  const { scene } = twoWalls(1);
  const side = scene.walls[1]!;

  it("is the whole picture, or the walls alone when the notes are switched off", () => {
    assert.equal(boxToFit(scene, null, []), scene.view);
    const walls = boxToFit(scene, null, ["notes"]);
    assert.ok(walls.bottom < scene.view.bottom && walls.left >= scene.view.left);
  });

  it("is one wall with the labels and dimensions that are shown", () => {
    const all = boxToFit(scene, "side", []);
    assert.deepEqual(all, roomOf(side, []));
    const bare = boundsOfPoints(side.bare);
    assert.deepEqual(roomOf(side, ["labels", "dimensions"]), {
      left: bare.left + side.at.x,
      right: bare.right + side.at.x,
      top: bare.top + side.at.y,
      bottom: bare.bottom + side.at.y,
    });
    assert.ok(all.bottom > side.at.y, "dimensions stand below the wall");
  });

  it("is the pieces that a finding speaks of, else its wall", () => {
    const name = "faults.tileplan";
    const picture = planPicture(exampleText(name), exampleSource(name), 1, name);
    const finding = picture.findings.find((each) => each.code === "cut/sliver")!;
    const { box, rings, at } = placeOfFinding(picture.scene, finding.wall, finding.pieces)!;
    const wall = picture.scene.walls.find((each) => each.name === finding.wall)!;
    const whole = placeOfFinding(picture.scene, finding.wall, [])!;
    assert.equal(at, wall.at);
    assert.equal(rings.length, finding.pieces.length);
    assert.deepEqual(whole.rings, []);
    assert.equal(whole.box.left, wall.at.x + boundsOfPoints(wall.bare).left);
    assert.ok(box.right - box.left < whole.box.right - whole.box.left);
    assert.equal(placeOfFinding(picture.scene, null, []), null);
  });
});
