import assert from "node:assert/strict";
import type { Edge, Opening, Step, Trim } from "../../../src/model/index.js";
import { boundsOf } from "../../../src/solver/index.js";
import { layFrame } from "../../../src/solver/trim/frame.js";

const here = { line: 0, character: 0 };
const range = { start: here, end: here };
const origin = { file: "a", range, head: range };
const trim: Trim = {
  name: "nose",
  title: "",
  face: { along: 60, across: 20 },
  thickness: 8,
  lot: null,
  price: null,
  origin,
  allows: [],
};
const level = (value: number) => ({ at: [0], value: [value] });
function frame(
  join: "mitre" | "butt",
  kind: Opening["kind"] = "window",
  steps: readonly Step[] = [],
) {
  const opening: Opening = {
    kind,
    name: "sash",
    reaches: kind === "door" ? "floor" : null,
    at: { x: 200, y: 300 },
    free: { x: null, y: null },
    size: { across: 100, up: 150 },
    frame: { trim, join, inset: 0, origin },
    inside: null,
    movement: 2,
    origin,
    allows: [],
  };
  const runs = layFrame(opening, { bottom: level(7), steps, joint: 2 });
  return new Map(runs.map((run) => [run.side, run]));
}

describe("layFrame", () => {
  it("lays four mitred sides round the opening, pieces centred, the joint true across the mitre", () => {
    const bottom = frame("mitre").get("bottom")!;
    // The run is 140 long: 60 + 2 x 2 leaves 38 at each end. The mitre stands back 2 / sqrt 2.
    assert.deepEqual(
      bottom.pieces.map((piece) => piece.shape.outline),
      [
        [181, 280, 218, 280, 218, 300, 201, 300],
        [220, 280, 280, 280, 280, 300, 220, 300],
        [282, 280, 319, 280, 299, 300, 282, 300],
      ],
    );
    assert.deepEqual(
      bottom.pieces.map((piece) => [piece.mitre, piece.whole]),
      [
        [["left"], false],
        [[], true],
        [["right"], false],
      ],
    );
    assert.deepEqual(bottom.joints.map(boundsOf), [
      { left: 218, bottom: 280, right: 220, top: 300 },
      { left: 280, bottom: 280, right: 282, top: 300 },
    ]);
  });

  it("turns every outline anticlockwise on every side", () => {
    for (const run of frame("mitre").values()) {
      for (const { shape } of run.pieces) {
        assert.equal(shape.outline[1], boundsOf(shape.outline).bottom, run.side);
      }
    }
  });

  it("butts the jambs between a sill and a head that run through", () => {
    const runs = frame("butt");
    assert.equal(boundsOf(runs.get("bottom")!.pieces[0]!.shape.outline).left, 180);
    assert.equal(boundsOf(runs.get("left")!.pieces[0]!.shape.outline).bottom, 302);
    assert.equal(boundsOf(runs.get("left")!.pieces.at(-1)!.shape.outline).top, 448);
    assert.deepEqual(runs.get("left")!.pieces[0]!.mitre, []);
  });

  it("runs a door's jambs to the floor and leaves out its sill", () => {
    const runs = frame("mitre", "door");
    assert.equal(runs.has("bottom"), false);
    assert.equal(boundsOf(runs.get("left")!.pieces[0]!.shape.outline).bottom, 7);
    assert.deepEqual(runs.get("left")!.pieces[0]!.mitre, []);
    assert.deepEqual(runs.get("left")!.pieces.at(-1)!.mitre, ["top"]);
  });

  it("stands each jamb of a door on the floor under itself, where a step of the floor is under the door", () => {
    const floor: Edge = {
      side: "bottom",
      meets: { kind: "floor" },
      measured: [],
      outlined: true,
      joint: { kind: "movement", width: 3 },
      stated: true,
      origin,
    };
    const meets = { left: floor, right: null, bottom: null, top: floor };
    const steps = [{ left: 250, bottom: -600, right: 900, top: 90, meets }];
    const runs = frame("butt", "door", steps);
    assert.equal(boundsOf(runs.get("left")!.pieces[0]!.shape.outline).bottom, 7);
    assert.equal(boundsOf(runs.get("right")!.pieces[0]!.shape.outline).bottom, 93);
  });
});
