import assert from "node:assert/strict";
import { drawHeadless } from "../../src/drawing/headless.js";
import { run } from "../../src/engine.js";
import { ALONE } from "../support/solve-text.js";

/** What mutated plans once brought down, as short as it goes. */
const plan = (...wall: readonly string[]) =>
  [
    'plan "pinned"',
    "units mm",
    "tile field {\n  face 50 x 50\n  thickness 8\n}",
    "trim edging {\n  face 60 x 20\n  thickness 8\n}",
    "wall back {\n  size 200 x 300",
    ...wall.map((line) => `  ${line}`),
    "  lay field {\n    bond stack\n    joint 2\n  }",
    "}",
    "",
  ].join("\n");

const take = (text: string) => {
  const outcome = run(text, ALONE);
  drawHeadless(outcome.scene());
  return outcome;
};

describe("what mutated plans once found", () => {
  it("a negative reading is underlined to its end", () => {
    const { diagnostics } = take(plan("bottom pan measured 5: -250, 9: 1"));
    const told = diagnostics.find(({ code }) => code === "plan/reading-large");
    assert.deepEqual(told?.range, {
      start: { line: 12, character: 25 },
      end: { line: 12, character: 29 },
    });
  });

  it("a mistyped opening stands for the one that was meant", () => {
    const { plan: read } = take(plan("windou light {", "  at 50, 50", "  size 50 x 50", "}"));
    assert.equal(read.walls[0]?.openings[0]?.kind, "window");
  });

  it("a mistyped side stands for the one that was meant", () => {
    const { plan: read } = take(plan("bottm pan movement 4"));
    assert.equal(read.walls[0]?.edges.bottom.joint?.width, 4_000_000);
  });

  it("a joint wider than a frame's side leaves the side without trim", () => {
    const window = ["window light {", "  at 60, 60", "  size 50 x 50", "  frame edging mitre", "}"];
    take(plan(...window).replace("joint 2", "joint 400"));
  });

  it("a strip kilometres wide is drawn without a hatch of a million lines", () => {
    const text = plan("top free trim edging").replace("face 60 x 20", "face 60 x 3889375");
    assert.ok(drawHeadless(run(text, ALONE).scene()).length < 1_000_000);
  });
});
