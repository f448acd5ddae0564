import assert from "node:assert/strict";
import { boxRing, circleRing, findSpot } from "../../src/preview/find-spot.js";
import { indexPieces, pieceRings, placeInside } from "../../src/preview/piece-index.js";
import { boundsOfPoints } from "../../src/drawing/index.js";
import { exampleNames, exampleSource, exampleText } from "../support/examples.js";
import { planPicture, servedPlan } from "./support/plan-picture.js";
import { twoWalls } from "./support/show-plan.js";

describe("what stands at a place of the picture", () => {
  const { scene } = twoWalls(1);
  const [back, side] = scene.walls as [(typeof scene.walls)[0], (typeof scene.walls)[0]];
  const at = (wall: typeof back, x: number, y: number) =>
    findSpot(scene, { x: wall.at.x + x, y: wall.at.y + y }, indexPieces);

  it("is a piece, as its own wall counts", () => {
    const spot = at(side, 50, -30)!;
    assert.equal(spot.wall?.name, "side");
    assert.deepEqual([Math.round(spot.at.x), Math.round(spot.at.y)], [50, -30]);
    assert.equal(spot.piece, 0);
    assert.match(spot.key, /^side\/piece 0$/);
  });

  it("keeps its key over one thing and changes it for the next", () => {
    assert.equal(at(side, 50, -30)!.key, at(side, 60, -40)!.key);
    assert.notEqual(at(side, 50, -30)!.key, at(side, 250, -30)!.key);
  });

  it("is an opening over what lies behind it", () => {
    const { box } = back.openings[0]!;
    const spot = at(back, (box.left + box.right) / 2, (box.top + box.bottom) / 2)!;
    assert.equal(spot.key, "back/opening sash");
    assert.deepEqual(spot.rings, [boxRing(box)]);
  });

  it("is a soft joint between the tile and what it meets", () => {
    assert.match(at(back, 600, -1)!.key, /^back\/soft bottom/);
  });

  it("is nothing beside the walls", () => {
    assert.equal(findSpot(scene, { x: back.at.x - 300, y: back.at.y - 100 }, indexPieces), null);
  });

  it("is a finding's badge over all else, and a hole or a trim in their places", () => {
    const faults = exampleText("faults.tileplan");
    const picture = planPicture(faults, exampleSource("faults.tileplan"), 1, "f");
    const wall = picture.scene.walls.find((each) => each.holes.length > 0)!;
    const spotAt = (x: number, y: number) =>
      findSpot(picture.scene, { x: wall.at.x + x, y: wall.at.y + y }, indexPieces)!;
    const badge = wall.badges[0]!;
    assert.equal(spotAt(badge.middle.x, badge.middle.y).badge, badge.number);
    const { middle, radius, name } = wall.holes[0]!;
    assert.match(spotAt(middle.x + radius / 2, middle.y).key, new RegExp(`hole ${name}$`));
    const note = picture.scene.badges[0]!;
    assert.equal(findSpot(picture.scene, note.middle, indexPieces)!.badge, note.number);
  });

  it("is what the service reads there: the same piece, with the same outline", () => {
    for (const name of exampleNames()) {
      const { picture, read } = servedPlan(exampleText(name), exampleSource(name), 1, name);
      for (const wall of picture.scene.walls) {
        const index = indexPieces(wall);
        for (let i = 0; i < index.count; i++) {
          const place = placeInside(index, i);
          const reading = read({ uri: name, version: 1, wall: wall.name, ...place })!;
          assert.equal(reading.piece?.split("/")[1], String(index.course[i]), reading.title);
          const [outline] = pieceRings(index, i);
          const told = boundsOfPoints(reading.outline);
          const drawn = boundsOfPoints(outline!);
          for (const side of ["left", "top", "right", "bottom"] as const) {
            // The scene's figures are rounded to the thousandth of a millimetre.
            assert.ok(Math.abs(told[side] - drawn[side]) <= 0.0006, `${reading.piece} ${side}`);
          }
        }
      }
    }
  });

  it("gives a circle's ring its radius at every corner", () => {
    const ring = circleRing({ x: 3, y: 4 }, 5);
    for (let i = 0; i < ring.length; i += 2) {
      assert.ok(Math.abs(Math.hypot(ring[i]! - 3, ring[i + 1]! - 4) - 5) < 1e-9);
    }
  });
});
