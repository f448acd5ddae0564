import assert from "node:assert/strict";
import { stateOf } from "./state-of.js";
import { wallPlan } from "./plans.js";
import { run } from "../../src/engine.js";
import { Figures } from "../../src/service/figures.js";
import { hoverLay } from "../../src/service/hover-lay.js";
import { exampleSource, exampleText } from "../support/examples.js";

describe("a lay in figures", () => {
  it("tells the ends of each phase of its bond", () => {
    const name = "three-walls.tileplan";
    const { solved } = run(exampleText(name), exampleSource(name));
    const [lay] = solved.walls[0]!.lays;
    const text = hoverLay([lay!], new Figures("inch"));
    assert.match(text, /ends of course 1: left 5 7\/8 in \(whole\), right /);
    assert.match(text, /ends of course 2: /);
    assert.ok(!text.includes("ends of course 3"));
  });

  const lay = (lines: string, side = "wall"): string => {
    const text = wallPlan(lines).replace("left wall", `left ${side}`);
    const other =
      "wall side {\n  size 30 x 48\n  right corner back over movement 1/8\n  lay pressed {\n    bond stack\n    joint 1/16\n  }\n}\n";
    const [wall] = stateOf(text + (side === "wall" ? "" : other)).outcome.solved.walls;
    return hoverLay(wall!.lays, new Figures("inch"));
  };

  it("says which parts were chosen", () => {
    const text = lay("    joint 1/16\n    up full course from bottom\n");
    assert.match(text, /across [^\n]+ \(chosen\)\s*\n/);
    assert.match(text, /joint 1\/16 in\s*\n/);
    assert.match(text, /up full course from bottom\s*\n/);
  });

  it("tells how flat the wall is to be for its tile, with the source", () => {
    const text = lay("    joint 1/16\n");
    assert.match(
      text,
      /flat to 1\/4 in over 120 in and 1\/16 in over 12 in \(quoted in tileletter\.com/,
    );
  });

  it("has one pair of ends in a stack bond, and says where another wall's tile hides one", () => {
    const at = (place: string): string =>
      `    joint 1/16\n    across tile centred at ${place}\n    up full course from bottom\n`;
    // 5 5/16 in of the first piece, of which the other wall's tile of 5/16 in and its joint of 1/8 in leave 5 1/8 in.
    const under = lay(at("2 1/2"), "corner side under");
    assert.match(under, /end cuts: left 5 1\/8 in, right 15\/16 in/);
    const hidden = lay(at("3 5/16"), "corner side under");
    assert.match(hidden, /end cuts: left hidden, right 1\/8 in/);
  });

  it("of which courses are set tells what is set, and the figures of what is still to come", () => {
    const name = "day-two.tileplan";
    const { solved } = run(exampleText(name), exampleSource(name));
    const text = hoverLay(solved.walls[0]!.lays, new Figures("inch"));
    assert.match(
      text,
      /courses 1 to 6 are set, the top measured at 17 11\/16 in \(0 in from the left\)/,
    );
    assert.match(text, /joint \S+ in \(chosen\)/);
    assert.match(text, /ends of course 7: /);
    assert.ok(!text.includes("ends of course 1:"));
  });

  it("tells a joint that was chosen as wide as no spacer exactly, and the nearest spacers", () => {
    const wished = "prefer {\n  whole courses at top\n}\n";
    const lines = "    joint 1/16 to 3/16\n    up full course from bottom\n";
    // 16 courses of 2 7/8 in, each with a joint of 0.08 in, between joints of 1/8 in.
    const text = wished + wallPlan(lines).replace("47 3/16", "47.53");
    const [wall] = stateOf(text).outcome.solved.walls;
    const told = hoverLay(wall!.lays, new Figures("inch"));
    assert.match(told, /joint 3\/32- in \(chosen: exactly 2\.032 mm, nearest spacers 5\/64 in\)/);
  });
});
