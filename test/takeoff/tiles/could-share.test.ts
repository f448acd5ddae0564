import assert from "node:assert/strict";
import { couldShare } from "../../../src/takeoff/tiles/could-share.js";
import { posesOf } from "../../../src/takeoff/tiles/demand.js";
import { EDGE } from "../../../src/takeoff/tiles/edges.js";

const FACE = { across: 100, up: 50, directional: true, kerf: 2 };
const piece = (width: number, height: number, needs: number) => ({
  label: "",
  course: 1,
  width,
  height,
  needs,
});

function share(a: ReturnType<typeof piece>, b: ReturnType<typeof piece>, face = FACE): boolean {
  return couldShare(face, posesOf(a, face), posesOf(b, face));
}

describe("two pieces of one tile", () => {
  const right = EDGE.right | EDGE.bottom;
  const left = EDGE.left | EDGE.bottom;

  it("have room beside each other or over each other", () => {
    assert.ok(share(piece(40, 40, left), piece(58, 40, right)));
    assert.ok(!share(piece(40, 40, left), piece(59, 40, right)));
    assert.ok(share(piece(80, 20, left), piece(80, 28, EDGE.left | EDGE.top)));
  });

  it("don't want the same edge on both sides of the cut", () => {
    assert.ok(!share(piece(40, 40, left), piece(40, 40, left)));
    assert.ok(share(piece(40, 40, left), piece(40, 40, left), { ...FACE, directional: false }));
  });

  it("aren't one that spans the tile one way and one that spans it the other", () => {
    const rip = piece(100, 10, EDGE.left | EDGE.right | EDGE.bottom);
    const crosscut = piece(10, 50, EDGE.bottom | EDGE.top | EDGE.left);
    assert.ok(!share(rip, crosscut));
  });
});
