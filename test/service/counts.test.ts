import assert from "node:assert/strict";
import { takeoff } from "../../src/takeoff/index.js";
import { run } from "../../src/engine.js";
import { ALONE } from "../support/solve-text.js";
import { Plans } from "./plans.js";

const PLAN = `units inch
tile field {
  face 4 x 4
  thickness 1/4
  box 25
}
wall back {
  size 43 3/8 x 22 7/8
  lay field {
    bond stack
    joint 1/8
    across full tile from left
    up full course from bottom
  }
}
wall bare {
  size 40 x 40
}
`;

describe("counts", () => {
  const plans = new Plans();

  it("tell at a tile's heading how many are needed, and at a wall's how many pieces are cut", () => {
    const { tiles, walls } = takeoff(run(PLAN, ALONE).solved);
    const counts = plans.service.counts(plans.open(PLAN));
    assert.deepEqual(
      counts.map(({ at, text }) => [at.line, text]),
      [
        [1, `# ${tiles[0]!.needed} needed, ${tiles[0]!.boxes!.count} boxes`],
        [6, `# ${walls[0]!.pieces.length} cuts`],
      ],
    );
    assert.deepEqual(
      counts.map(({ edits }) => edits),
      [[], []],
    );
  });

  it("are none of walls that are not laid, and none outside the lines asked for", () => {
    const within = { start: { line: 5, character: 0 }, end: { line: 20, character: 0 } };
    const lines = plans.service.counts(plans.open(PLAN), within).map(({ at }) => at.line);
    assert.deepEqual(lines, [6]);
    assert.deepEqual(plans.service.counts(plans.open("wall w {\n  size 40 x 40\n}\n")), []);
  });

  it("are not told of tiles that another file states", () => {
    const text = PLAN.slice(PLAN.indexOf("wall back"));
    const shared = new Plans({ "/plans/tiles.tileplan": PLAN.slice(0, PLAN.indexOf("wall back")) });
    const counts = shared.service.counts(shared.open(`use "tiles.tileplan"\nunits inch\n${text}`));
    assert.deepEqual(
      counts.map(({ text: told }) => told.replace(/\d+/, "N")),
      ["# N cuts"],
    );
  });

  it("are none of plans of very many pieces", () => {
    const large = PLAN.replace("43 3/8 x 22 7/8", "900 x 900");
    assert.deepEqual(plans.service.counts(plans.open(large)), []);
  });
});
