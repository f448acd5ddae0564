import assert from "node:assert/strict";
import { run } from "../../../src/engine.js";
import { exampleText } from "../../support/examples.js";
import { printSketch } from "../../support/print-sketch.js";
import { randomSketch } from "../../support/random-sketch.js";
import { edited, Plans, wallPlan } from "../plans.js";

const WHOLE = { start: { line: 0, character: 0 }, end: { line: 100_000, character: 0 } };

/** The text with everything written down that was left to the solver; null where nothing was. */
function writtenDown(text: string, plans = new Plans()): string | null {
  const fixes = plans.service
    .fixes(plans.open(text), WHOLE)
    .filter(({ title }) => title.startsWith("Write the chosen start down"));
  return fixes.length === 0
    ? null
    : edited(
        text,
        fixes.flatMap(({ edits }) => edits),
      );
}

/** Every piece of every wall, to the nanometre. */
function layoutOf(text: string, plans = new Plans()): unknown {
  const { solved } = run(text, { file: "/plans/bath.tileplan", root: "/plans", read: plans.read });
  return solved.walls.map(({ lays }) =>
    lays.map(({ pieces, joint }) => [joint, [...pieces.bounds], [...pieces.course]]),
  );
}

function choices(text: string, plans = new Plans()): unknown[] {
  const { solved } = run(text, { file: "/plans/bath.tileplan", root: "/plans", read: plans.read });
  return solved.walls.flatMap(({ lays }) => lays.flatMap(({ choice }) => choice ?? []));
}

describe("writing the chosen start down", () => {
  it("adds the lines that were left out, and nothing is left to the solver", () => {
    const text = wallPlan("    joint 1/16 to 1/8\n");
    const written = writtenDown(text)!;
    assert.match(written, / {4}joint \S[^\n]*\n {4}across [^\n]+\n {4}up [^\n]+\n {2}}\n/);
    assert.deepEqual(choices(written), []);
  });

  it("gives the same layout to the nanometre, for the example of a back wall", () => {
    const text = exampleText("back-wall.tileplan");
    const written = writtenDown(text)!;
    assert.deepEqual(choices(written), []);
    assert.deepEqual(layoutOf(written), layoutOf(text));
  });

  it("gives the same layout to the nanometre, for random walls in inches and millimetres", () => {
    let tried = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const stated = printSketch(randomSketch(seed), seed % 2 ? "inch" : "mm");
      const text = stated.replace(/^ *(across|up) .*\n/gm, "");
      const written = writtenDown(text);
      if (written === null) continue;
      tried++;
      assert.deepEqual(choices(written), [], `seed ${seed}`);
      assert.deepEqual(layoutOf(written), layoutOf(text), `seed ${seed}`);
    }
    assert.ok(tried >= 20, `${tried} walls with a lay`);
  });

  it("is not offered where everything is stated, nor beside a start that can't be understood", () => {
    const stated =
      "    joint 1/16\n    across tile centred on wall\n    up full course from bottom\n";
    assert.equal(writtenDown(wallPlan(stated)), null);
    assert.equal(writtenDown(wallPlan("    joint 1/16\n    across tile centred on\n")), null);
    assert.equal(
      writtenDown(wallPlan("    joint 1/16\n    across tile centred on nothing\n")),
      null,
    );
  });
});
