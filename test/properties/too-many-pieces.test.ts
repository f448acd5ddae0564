import assert from "node:assert/strict";
import { run } from "../../src/engine.js";
import { ALONE } from "../support/solve-text.js";

const MOST = 2_000_000;
/** A table of two million pieces takes about 85 MB; refusing takes nothing like it. */
const MOST_MEMORY = 64 * 2 ** 20;

const plan = (face: string, walls: readonly string[], lay = "") =>
  [
    'plan "too many"',
    "units mm",
    `tile field {\n  face ${face}\n  thickness 8\n}`,
    ...walls.map(
      (size, i) =>
        `wall w${i} {\n  size ${size}\n  lay field {\n    bond stack\n    joint 2\n${lay}  }\n}`,
    ),
    "",
  ].join("\n");

const STARTED = "    across full tile from left\n    up full course from bottom\n";

describe("a plan that asks for more than two million pieces", () => {
  const cases: Readonly<Record<string, string>> = {
    "a tiny tile": plan("0.1 x 0.1", ["6000 x 3000"], STARTED),
    "a tile of one nanometre": plan("0.000001 x 0.000001", ["6000 x 3000"], STARTED),
    "a huge wall": plan("50 x 50", ["900m x 900m"], STARTED),
    "a long, low wall": plan("0.1 x 10", ["900m x 100"], STARTED),
    "one that leaves the start to the solver": plan("5 x 5", ["20m x 20m"]),
  };
  for (const [name, text] of Object.entries(cases)) {
    it(`${name}: is refused with a message at its place, before memory goes`, () => {
      const before = process.memoryUsage();
      const { solved, diagnostics } = run(text, ALONE);
      const after = process.memoryUsage();
      assert.equal(solved.walls[0]!.lays.length, 0);
      assert.ok(solved.walls[0]!.refused!.pieces > MOST);
      assert.equal(solved.walls[0]!.refused!.most, MOST);
      const told = diagnostics.filter(({ severity }) => severity === "error");
      assert.equal(told.length, 1, JSON.stringify(told));
      assert.match(told[0]!.message, /piece/);
      assert.equal(text.split("\n")[told[0]!.range.start.line]!.trim().split(" ")[0], "wall");
      const grown = after.arrayBuffers - before.arrayBuffers + after.heapUsed - before.heapUsed;
      assert.ok(grown < MOST_MEMORY, `${grown} bytes more`);
    });
  }

  it("keeps the walls that fit when several add up", () => {
    const text = plan("8 x 8", ["10m x 8m", "10m x 8m", "1m x 1m", "10m x 8m"], STARTED);
    const { solved } = run(text, ALONE);
    assert.deepEqual(
      solved.walls.map(({ lays, refused }) => [lays.length, refused !== null]),
      [
        [1, false],
        [1, false],
        [1, false],
        [0, true],
      ],
    );
  });
});
