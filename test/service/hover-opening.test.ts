import assert from "node:assert/strict";
import { run } from "../../src/engine.js";
import { Figures } from "../../src/service/figures.js";
import { hoverHole, hoverOpening } from "../../src/service/hover-opening.js";
import { exampleSource, exampleText } from "../support/examples.js";

describe("an opening in figures", () => {
  const name = "niche-wall.tileplan";
  const { solved } = run(exampleText(name), exampleSource(name));
  const [wall] = solved.walls;

  it("tells whole tiles and a whole course apart from cut ones", () => {
    const text = hoverOpening(wall!, wall!.wall.openings[0]!, new Figures("mm"));
    assert.match(text, /under it: a whole course/);
    assert.match(text, /right of it: whole tiles/);
  });

  it("tells of a hole how wide it is and where its middle is", () => {
    const text = hoverHole(wall!.wall.holes[0]!, new Figures("mm"));
    assert.match(text, /60 mm across, centre 1205 mm from the left and 1060 mm up/);
  });
});
