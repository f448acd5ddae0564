import assert from "node:assert/strict";
import { holeFacts, openingFacts } from "../../src/compare/opening-facts.js";
import { told, WALL } from "./wall.js";

describe("openingFacts", () => {
  const [shelf] = told(WALL).solved.walls[0]!.wall.openings;
  const before = shelf!;

  it("tells place, size, frame, soft joint, depth and fall", () => {
    const after = {
      ...before,
      at: { x: 0, y: 0 },
      size: { across: 5, up: 5 },
      movement: null,
      inside: { depth: 4, fall: 1, tiled: true, lays: {} },
    };
    assert.deepEqual(
      openingFacts({ before, after }).map(({ name }) => name),
      ["place", "size", "soft joint", "depth", "fall"],
    );
  });

  it("says nothing of one that is in one plan alone", () => {
    assert.deepEqual(openingFacts({ before, after: null }), []);
  });

  it("tells a hole's place and diameter", () => {
    const hole = {
      name: "spout",
      at: { x: 1, y: 2 },
      across: 3,
      plate: null,
      origin: before.origin,
    };
    const moved = { ...hole, at: { x: 2, y: 2 }, across: 4 };
    assert.deepEqual(
      holeFacts({ before: hole, after: moved }).map(({ name }) => name),
      ["place", "diameter"],
    );
    const plate = { kind: "round", across: 9 } as const;
    const [covered, ...others] = holeFacts({ before: hole, after: { ...hole, plate } });
    assert.deepEqual(others, []);
    assert.deepEqual(
      [covered!.name, covered!.before, covered!.after],
      ["plate", null, { kind: "length", nm: 9 }],
    );
    const square = { kind: "square", across: 9, up: 6 } as const;
    const [other] = holeFacts({ before: { ...hole, plate }, after: { ...hole, plate: square } });
    assert.deepEqual(other!.after, { kind: "size", across: 9, up: 6 });
  });
});
