import assert from "node:assert/strict";
import {
  ALL_EDGES,
  EDGE,
  edgesOf,
  hasEdges,
  turnedEdges,
} from "../../../src/takeoff/tiles/edges.js";

describe("edges as a sum", () => {
  it("go round anticlockwise: right is at the top after a quarter turn", () => {
    assert.equal(turnedEdges(EDGE.right, 1), EDGE.top);
    assert.equal(turnedEdges(EDGE.top, 1), EDGE.left);
    assert.equal(turnedEdges(EDGE.left, 1), EDGE.bottom);
    assert.equal(turnedEdges(EDGE.bottom, 1), EDGE.right);
    assert.equal(turnedEdges(EDGE.left | EDGE.top, 2), EDGE.right | EDGE.bottom);
  });

  it("are where they were after four quarter turns", () => {
    for (let edges = 0; edges <= ALL_EDGES; edges++) {
      assert.equal(turnedEdges(turnedEdges(edges, 3), 1), edges);
      assert.equal(turnedEdges(edges, 0), edges);
    }
  });

  it("are told from a list of sides", () => {
    assert.equal(edgesOf([]), 0);
    assert.equal(edgesOf(["left", "right", "bottom", "top"]), ALL_EDGES);
    assert.ok(hasEdges(edgesOf(["left", "top"]), EDGE.top));
    assert.ok(!hasEdges(edgesOf(["left", "top"]), EDGE.top | EDGE.right));
  });
});
