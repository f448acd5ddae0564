import assert from "node:assert/strict";
import {
  boundsOfPoints,
  buildRoomScene,
  type PictureBox,
  type Scene,
} from "../../../src/drawing/index.js";
import { boxesOverlap, boxWithin } from "../../../src/drawing/labels.js";
import { run } from "../../../src/engine.js";
import { FOUR_WALLS } from "../../rooms/four-walls-text.js";
import { wrappedRoom } from "../../rooms/wrapped-room.js";
import { exampleSource, exampleText } from "../../support/examples.js";
import { ALONE } from "../../support/solve-text.js";

const NAME = "room.tileplan";
const example = (): Scene => buildRoomScene(run(exampleText(NAME), exampleSource(NAME)).solved);

const boxesOf = (scene: Scene): PictureBox[] =>
  scene.walls.map(({ bare, at }) => {
    const box = boundsOfPoints(bare);
    return { ...box, left: box.left + at.x, right: box.right + at.x };
  });

describe("the room unfolded", () => {
  it("has its walls side by side in their order round the room, on one level line", () => {
    const scene = example();
    assert.deepEqual(
      scene.walls.map(({ name }) => name),
      ["plumbing", "back", "end", "pier"],
    );
    assert.deepEqual(new Set(scene.walls.map(({ at }) => at.y)), new Set([0]));
    const boxes = boxesOf(scene);
    boxes.slice(1).forEach((box, i) => assert.ok(box.left > boxes[i]!.right));
  });

  it("lets courses run through: joined walls have their joints at the same heights", () => {
    const { solved } = run(exampleText(NAME), exampleSource(NAME));
    const beds = solved.walls.map(({ lays: [lay] }) => lay!.courses.map(({ bottom }) => bottom));
    for (const each of beds) assert.deepEqual(each, beds[0]);
  });

  it("marks each corner: a fold between the walls, and words under it that lie clear", () => {
    const scene = example();
    const folds = scene.walls.map(
      ({ lines }) => lines.filter(({ kind }) => kind === "centre").length,
    );
    assert.deepEqual(folds, [1, 1, 1, 0]);
    const words = scene.labels.filter(({ role }) => role === "caption");
    assert.deepEqual(
      words.map(({ text }) => text),
      [
        ...["inside corner", "Plumbing wall covers", "soft joint 1/8"],
        ...["inside corner", "End wall covers", "soft joint 1/8"],
        ...["outside corner", "End wall covers", "grout joint 1/16"],
      ],
    );
    words.forEach((label, i) => {
      assert.ok(boxWithin(label.box, scene.view));
      assert.ok(!words.slice(i + 1).some((other) => boxesOverlap(label.box, other.box)));
    });
  });

  it("marks the last corner of a closed room at both its ends, each with the wall that it meets", () => {
    const scene = buildRoomScene(run(FOUR_WALLS, ALONE).solved);
    const folds = scene.walls.map(
      ({ lines }) => lines.filter(({ kind }) => kind === "centre").length,
    );
    assert.deepEqual(folds, [2, 1, 1, 1]);
    const words = scene.labels.filter(({ role }) => role === "caption").map(({ text }) => text);
    assert.equal(words[0], "meets left-wall");
    assert.deepEqual(words.slice(-4), [
      ...["meets back", "inside corner", "left-wall covers", "soft joint 1/8"],
    ]);
    for (const { box } of scene.labels) assert.ok(boxWithin(box, scene.view));
    const [first, last] = [scene.walls[0]!, scene.walls.at(-1)!];
    const xs = ({ lines, at }: typeof first) =>
      lines.filter(({ kind }) => kind === "centre").map(({ points }) => points[0]! + at.x);
    const [left, right] = [Math.min(...xs(first)), Math.max(...xs(last))];
    for (const box of boxesOf(scene)) assert.ok(box.left > left && box.right < right);
  });

  it("keeps the words of narrow walls' corners apart", () => {
    const narrow = wrappedRoom().replaceAll("size 60 x 48", "size 7 x 48");
    const { labels } = buildRoomScene(run(narrow, ALONE).solved);
    const words = labels.filter(({ role }) => role === "caption");
    assert.equal(words.filter(({ text }) => text === "inside corner").length, 4);
    words.forEach((label, i) => {
      assert.ok(!words.slice(i + 1).some((other) => boxesOverlap(label.box, other.box)));
    });
  });

  it("is drawn of a plan without walls too", () => {
    assert.deepEqual(buildRoomScene(run("", ALONE).solved).walls, []);
  });
});
