import assert from "node:assert/strict";
import { stateOf } from "./state-of.js";
import { wallPlan } from "./plans.js";
import { run } from "../../src/engine.js";
import { formatLength } from "../../src/measure/index.js";
import { holeFits } from "../../src/solver/index.js";
import { TWO_LAYS } from "../sheets/options/bench.js";
import { Figures } from "../../src/service/figures.js";
import { hoverHole, hoverOpening } from "../../src/service/hover-opening.js";
import { bandText, LAYS } from "../rules/band-text.js";
import { nicheText } from "../solver/insides/niche-text.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { exampleSource, exampleText } from "../support/examples.js";

const INSIDE = `units mm
bed 3
tile field {
  face 150 x 100
  thickness 8
}
tile mosaic {
  face 48 x 48
  thickness 8
}
wall w {
  size 1200 x 1500
  left free
  bottom free
  niche n {
    at 304, 408
    size 402 x 402
    movement 2
    depth 90
    back mosaic stack
  }
  lay field {
    bond stack
    joint 2
    across full tile from left
    up full course from bottom
  }
}
`;

describe("an opening in figures", () => {
  it("is told by the lay that it lies in, and what is beside it by each lay that is", () => {
    const [wall] = stateOf(TWO_LAYS).outcome.solved.walls;
    const told = (i: number): string =>
      hoverOpening(wall!, wall!.wall.openings[i]!, new Figures("inch"));
    // Two field tiles from 12 3/8 to 20 1/2 with the joints beside them are 8 3/8, 1/8 more than the niche
    // at each side; two courses from 41 to 45 1/8 likewise.
    assert.match(told(1), /on them at 12 3\/8 in, 41 in/);
    assert.match(told(1), /under it: .* of field/);
    assert.doesNotMatch(told(1), /of dado/);
    assert.doesNotMatch(told(0), /field/);
    const reaching = TWO_LAYS.replace(
      /at 12 3\/8, 40 3\/4\n {4}size 8 1\/8/,
      "at 8 1/8, 31\n    size 8",
    );
    const [over] = stateOf(reaching).outcome.solved.walls;
    const text = hoverOpening(over!, over!.wall.openings[1]!, new Figures("inch"));
    // Under it the wainscot's fourth course, from 24 3/8 up.
    assert.match(text, /under it: pieces 6 5\/8 in high of dado/);
    assert.match(text, /over it: .* of field/);
    const { tile } = holeFits(wall!.lays[1]!, wall!.wall.holes[0]!);
    const hole = hoverHole(wall!, wall!.wall.holes[0]!, new Figures("inch"));
    assert.match(hole, new RegExp(`middle of a tile at ${formatLength(tile!.x, "inch")}`));
  });

  it("is told how each surface inside it is laid and how much of that is cut", () => {
    const [wall] = stateOf(INSIDE).outcome.solved.walls;
    const text = hoverOpening(wall!, wall!.wall.openings[0]!, new Figures("mm"));
    // Between the tiles of its sides, 8 and the bed of 3 each, and joints of 2: 402 - 2 x 13 is what the back shows,
    // but it runs on behind them to 402 - 4, in 8 tiles of 48 with joints of 2, which are 398, and as high.
    assert.match(text, /back: mosaic stack, joint 2 mm; 64 pieces, none of them cut/);
    assert.match(text, /left side: field stack, joint 2 mm; 4 pieces, 4 of them cut/);
    assert.match(text, /sill: field stack, joint 2 mm; \d pieces, \d of them cut/);
  });

  it("is told where its surfaces start, as far as the plan states it", () => {
    const text = nicheText({
      niche:
        "depth 90mm\n back field across tile centred on shelf up full course from top\n" +
        "sides field across full tile from front up joint at 408mm\n" +
        "sill field across joint centred on wall up full course from back\nhead field across full tile from left",
    });
    const { wall } = firstWall(solveClean(text));
    const told = hoverOpening(wall, wall.wall.openings[0]!, new Figures("mm"));
    assert.match(
      told,
      /back: field stack, joint 2 mm, tile in its middle, full course from the top;/,
    );
    assert.match(told, /left side: .*, full tile from the front, joint at 408 mm;/);
    assert.match(told, /right side: .*, full tile from the front, joint at 408 mm;/);
    assert.match(told, /sill: .*, joint centred on the wall, full course from the back;/);
    assert.match(told, /head: .*, full tile from the left;/);
  });

  const name = "niche-wall.tileplan";
  const { solved } = run(exampleText(name), exampleSource(name));
  const [wall] = solved.walls;

  it("tells whole tiles and a whole course apart from cut ones", () => {
    const text = hoverOpening(wall!, wall!.wall.openings[0]!, new Figures("mm"));
    assert.match(text, /under it: a whole course/);
    assert.match(text, /right of it: whole tiles/);
  });

  it("tells of a hole how wide it is and where its middle is", () => {
    const text = hoverHole(wall!, wall!.wall.holes[0]!, new Figures("mm"));
    assert.match(text, /60 mm across, centre 1205 mm from the left and 1060 mm up/);
    assert.match(text, /middle of a tile at 1205 mm, 1053 mm/);
    assert.match(text, /middle of a joint at 1205 mm, 903 mm/);
  });

  it("tells of a hole's plate, and looks for whole tiles in the lay that it is in", () => {
    const text = bandText({
      back: "  hole low at 30, 12 across 2 plate 6 x 4\n  hole high at 30, 34 across 2",
      backLays: LAYS.replace("rest of field", "rest of pencil"),
    });
    const [back] = solveClean(text).solved.walls;
    const of = (i: number) => hoverHole(back!, back!.wall.holes[i]!, new Figures("inch"));
    assert.match(of(0), /covered by a plate of 6 in x 4 in/);
    // Tiles of 6 in with joints of 1/8 in: the fifth one's middle is at 27 1/2 in.
    assert.match(of(0), /middle of a tile at 27 1\/2 in, 10 7\/8 in/);
    // Pencils of 12 x 1/2 in begin at 26 1/8 in up: the thirteenth one's middle is 12 modules over 26 3/8 in.
    assert.match(of(1), /middle of a tile at 30 1\/4 in, 33 7\/8 in/);
    assert.ok(!of(1).includes("covered"));
  });

  it("tells how deep it is and how its sill or top falls", () => {
    const insideOf = (lines: string, kind = "niche"): string => {
      const text = wallPlan(
        "    joint 1/16\n",
        `  size 60 x 47 3/16\n  ${kind} n {\n    at 12, 12\n    size 12 x 12\n    ${lines}\n  }\n`,
      );
      const [back] = stateOf(text).outcome.solved.walls;
      return hoverOpening(back!, back!.wall.openings[0]!, new Figures("inch"));
    };
    assert.match(
      insideOf("depth 4\n    fall 1/8"),
      /depth 4 in, sill falls 1\/8 in towards the room/,
    );
    assert.match(insideOf("depth 4\n    fall -1/8"), /sill falls 1\/8 in back into the wall/);
    assert.match(insideOf("depth 4\n    fall 0"), /depth 4 in, sill flat/);
    assert.match(insideOf("depth 18", "bench"), /stands out 18 in, top without a stated fall/);
    assert.doesNotMatch(insideOf(""), /depth|sill/);
  });

  it("tells where an opening would be on the joints, when it is off them", () => {
    const off = (at: string, size = "11 15/16 x 5 15/16"): string => {
      const text = wallPlan(
        "    joint 1/16\n    across full tile from left\n    up full course from bottom\n",
        `  size 60 x 47 3/16\n  niche n {\n    at ${at}\n    size ${size}\n  }\n`,
      );
      const [back] = stateOf(text).outcome.solved.walls;
      return hoverOpening(back!, back!.wall.openings[0]!, new Figures("inch"));
    };
    // Tiles end at 6, 11 15/16 ... across and 3, 5 15/16 ... up.
    assert.match(off("12 3/8, 12"), /off the joints; on them at 11 15\/16 in, 11 13\/16 in/);
    const sized = off("12 3/8, 12", "13 x 5 15/16");
    assert.match(sized, /size 11 15\/16 in x 5 15\/16 in \(2 tiles x 2 courses\)/);
    assert.doesNotMatch(off("11 15/16, 11 13/16"), /joints;/);
  });

  it("says so where those places hang on a start that the solver chose", () => {
    const window = "  window s {\n    at 18, 12\n    size 20 x 20\n    movement 1/16\n  }\n";
    const told = (start: string): string => {
      const text = wallPlan(
        `    joint 1/16\n${start}`,
        `  size 60 x 47 3/16\n${window}  hole tap at 9, 9 across 1\n`,
      );
      const [back] = stateOf(text).outcome.solved.walls;
      const figures = new Figures("inch");
      const { openings, holes } = back!.wall;
      return hoverOpening(back!, openings[0]!, figures) + hoverHole(back!, holes[0]!, figures);
    };
    assert.equal(told("").match(/from the start chosen now: write it down first/g)?.length, 2);
    const stated = "    across full tile from left\n    up full course from bottom\n";
    assert.doesNotMatch(told(stated), /chosen now/);
  });

  it("tells from what to what, where courses end differently", () => {
    // In a running bond the course ends at the window with a whole tile, the next with half of one.
    const text = wallPlan(
      "    joint 1/16\n    across full tile from left\n    up full course from bottom\n",
      "  size 60 x 47 3/16\n  window s {\n    at 17 15/16, 12\n    size 20 x 20\n    movement 1/16\n  }\n",
    ).replace("bond stack", "bond running 1/2");
    const [back] = stateOf(text).outcome.solved.walls;
    const told = hoverOpening(back!, back!.wall.openings[0]!, new Figures("inch"));
    assert.match(told, /left of it: pieces 2 29\/32 in to 5 7\/8 in wide/);
    assert.match(told, /under it: pieces 1\/16 in high/);
  });
});
