import assert from "node:assert/strict";
import { boxWithin } from "../../../src/drawing/labels.js";
import {
  holeRoom,
  holeScenes,
  labelsInside,
  namedThings,
  openingScenes,
  stackedLabels,
  wordingSize,
} from "../../../src/drawing/scene/openings.js";
import { planOf, solvedWallOf, wallText } from "../support/scene-of.js";

const INSIDE =
  "  window sash {\n    at 12, 9\n    size 10 x 12\n    movement 1/8\n  }\n  hole valve at 30, 20 across 2 1/2";

describe("openings and holes", () => {
  const { solved, setting } = solvedWallOf(planOf(wallText(INSIDE)));

  it("stand where the plan says, in the picture's frame", () => {
    assert.deepEqual(openingScenes(solved), [
      {
        kind: "window",
        name: "sash",
        box: { left: 304.8, right: 558.8, top: -533.4, bottom: -228.6 },
      },
    ]);
    assert.deepEqual(holeScenes(solved), [
      { name: "valve", middle: { x: 762, y: -508 }, radius: 31.75, plate: null },
    ]);
  });

  it("have a plate round their middle, which counts to their room and is told", () => {
    const of = (plate: string) => {
      const { solved: wall, setting: own } = solvedWallOf(
        planOf(wallText(`  hole valve at 30, 20 across 2 1/2 plate ${plate}`)),
      );
      return { scene: holeScenes(wall)[0]!, thing: namedThings(wall, own)[0]! };
    };
    const round = of("6");
    assert.deepEqual(round.scene.plate, { kind: "round", radius: 76.2 });
    assert.deepEqual(round.thing.wordings[0], ["hole valve", "2 1/2 across", "plate 6"]);
    assert.deepEqual(round.thing.around, holeRoom(round.scene));
    const square = of("6 x 2");
    assert.deepEqual(square.scene.plate, { kind: "square", halfAcross: 76.2, halfUp: 25.4 });
    assert.equal(square.thing.wordings[0]![2], "plate 6 × 2");
    // As high as the hole of 2 1/2 in, which its plate leaves bare.
    assert.deepEqual(holeRoom(square.scene), {
      left: 685.8,
      right: 838.2,
      top: -539.75,
      bottom: -476.25,
    });
  });

  it("are plainly named, with their sizes", () => {
    const [window, hole] = namedThings(solved, setting);
    assert.deepEqual(window!.wordings[0], ["window sash", "10 × 12"]);
    assert.deepEqual(hole!.wordings[0], ["hole valve", "2 1/2 across"]);
  });

  it("have their names inside where they fit", () => {
    const [window, hole] = namedThings(solved, setting);
    const labels = labelsInside(window!, setting.em);
    assert.ok(labels);
    assert.ok(labels.every(({ box }) => boxWithin(box, window!.inside!)));
    assert.equal(labelsInside(hole!, setting.em), null);
  });

  it("turn the name upward in a narrow opening, and give it up in a tiny one", () => {
    const [window] = namedThings(solved, setting);
    const narrow = { ...window!, inside: { left: 0, right: 30, top: 0, bottom: 400 } };
    assert.equal(labelsInside(narrow, 12)?.[0]?.upward, true);
    const tiny = { ...window!, inside: { left: 0, right: 5, top: 0, bottom: 5 } };
    assert.equal(labelsInside(tiny, 12), null);
  });

  it("take the room that their lines take", () => {
    const lines = ["window sash", "10 × 12"];
    const { w, h } = wordingSize(lines, 10);
    for (const { box } of stackedLabels(lines, { x: 0, y: 0 }, 10)) {
      assert.ok(boxWithin(box, { left: -w / 2, right: w / 2, top: -h / 2, bottom: h / 2 }));
    }
  });
});
