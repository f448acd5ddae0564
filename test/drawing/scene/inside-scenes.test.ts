import assert from "node:assert/strict";
import { buildScene, type WallScene } from "../../../src/drawing/index.js";
import { boundsOfPoints } from "../../../src/drawing/picture.js";
import { insideNets } from "../../../src/drawing/scene/inside-scenes.js";
import { settingOf } from "../../../src/drawing/scene/setting.js";
import { nicheText } from "../../solver/insides/niche-text.js";
import { firstWall, solveClean } from "../../support/solve-text.js";

const text = nicheText({ wall: "2418mm x 2038mm" });
const answer = solveClean(text);
const setting = settingOf(answer.plan);
const [net] = insideNets(firstWall(answer).wall, [], true, setting);

function find(face: string): WallScene {
  return net!.faces.find(({ name }) => name === `back.shelf.${face}`)!;
}

function boxOf({ at, bare }: WallScene) {
  const { left, right, top, bottom } = boundsOfPoints(bare);
  return { left: left + at.x, right: right + at.x, top: top + at.y, bottom: bottom + at.y };
}

describe("the insides of an opening, folded out", () => {
  it("stand round the back: the head over it, the sill under it, the sides beside it", () => {
    const [back, sill, head] = [boxOf(find("back")), boxOf(find("sill")), boxOf(find("head"))];
    const [left, right] = [boxOf(find("left")), boxOf(find("right"))];
    assert.ok(head.bottom < back.top && back.bottom < sill.top);
    assert.ok(left.right < back.left && back.right < right.left);
    for (const each of [sill, head]) {
      assert.ok(Math.abs(each.left - back.left) < 0.01, "sill, back and head stand in line");
    }
  });

  it("have a heading and captions with their sizes", () => {
    const words = net!.faces.flatMap(({ labels }) => labels.map((label) => label.text));
    assert.deepEqual(words, [
      "head",
      "402 × 101",
      "niche shelf, folded out",
      "left side",
      "101 × 304",
      "back",
      "402 × 301",
      "right side",
      "101 × 304",
      "sill",
      "402 × 101.1",
    ]);
  });

  it("lie apart, and so do their words", () => {
    const scene = buildScene(answer.solved, []);
    const boxes = scene.walls.flatMap((wall) => [
      boxOf(wall),
      ...wall.labels.map(({ box }) => ({
        left: box.left + wall.at.x,
        right: box.right + wall.at.x,
        top: box.top + wall.at.y,
        bottom: box.bottom + wall.at.y,
      })),
    ]);
    const insides = boxes.slice(1 + scene.walls[0]!.labels.length);
    insides.forEach((a, i) => {
      for (const b of boxes.filter((each) => each !== a && insides.indexOf(each) !== i)) {
        const apart =
          a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
        assert.ok(apart, JSON.stringify([a, b]));
      }
    });
  });

  it("hide what the others cover of the back", () => {
    assert.deepEqual(
      find("back").hidden.map(({ side }) => side),
      ["left", "right", "bottom", "top"],
    );
  });

  it("are told with their wall where there are several", () => {
    const [several] = insideNets(firstWall(answer).wall, [], false, setting);
    const heading = several!.faces[0]!.labels.find(({ role }) => role === "heading");
    assert.equal(heading!.text, "back: niche shelf, folded out");
  });
});
