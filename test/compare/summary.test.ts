import assert from "node:assert/strict";
import { headline, summarise } from "../../src/compare/index.js";
import { mitredText } from "../rooms/mitred-text.js";
import { outsideText } from "../rooms/outside-text.js";
import { comparisonOf, edited, WALL } from "./wall.js";

type Edit = readonly [string, string];

/** What a setter is told, as it is printed: headings, and their lines drawn in. */
function summaryOf(before: string, ...edits: readonly Edit[]): string {
  return printed(before, edited(before, ...edits));
}

function printed(before: string, after: string): string {
  return summarise(comparisonOf(before, after))
    .map(({ title, lines }) => [title, ...lines.map((line) => `  ${line}`)].join("\n"))
    .join("\n");
}

const NICHE = `  niche shelf {
    at 16 5/8, 8 3/8
    size 8 1/8 x 4
    movement 1/8
  }
`;

/** The same without its niche. */
const PLAIN = WALL.replace(NICHE, "");

const WINDOW = WALL.replace(
  NICHE,
  `${NICHE}  window light {
    at 4 1/4, 14 1/2
    size 8 x 4
    frame nose butt
    movement 1/8
  }
`,
);

/** A joint too narrow for how much the tile varies; and the same with that allowed. */
const NARROW = edited(PLAIN, ["variation 1/64", "variation 1/16"]);
const WAIVED = edited(NARROW, [
  "bond stack",
  'bond stack\n    allow joint/too-narrow "a dry run looked well"',
]);

const HOLE = edited(PLAIN, [
  "  lay field {",
  "  hole spout at 22 3/4, 6 across 1 1/2\n  lay field {",
]);

/** Two walls that meet in a corner, their courses on one line. */
const CORNER = `plan "Corner"
units inch
bed 1/8
tile field {
  face 4 x 4
  thickness 1/4
}
wall back {
  size 33 x 12 1/2
  left corner side under movement 1/8
  lay field {
    bond stack
    joint 1/8
    across full tile from right
    up joint at 4 3/16
  }
}
wall side {
  size 16 5/8 x 12 1/2
  right corner back over movement 1/8
  lay field {
    bond stack
    joint 1/8
    across full tile from left
    up joint at 4 3/16
  }
}
`;

// Changes as a setter meets them, each with what is said of it, word for word.
describe("the summary of a change", () => {
  it("a wider joint", () => {
    assert.equal(
      summaryOf(PLAIN, ["joint 1/8\n", "joint 3/16\n"]),
      `What moved
  joint: 1/8 in -> 3/16 in
Cuts that changed
  9 pieces along the top: 2 in high -> 1 11/16 in high, in course 6
  5 pieces at the right end: whole -> 3 7/16 in wide, in courses 1 to 5
  1 piece at the right end, along the top (was along the top): 2 in high -> 3 7/16 in x 1 11/16 in, in course 6
Findings
  new: note balance/unequal-ends: the left end shows 4 in and the right end 3 7/16 in: 9/16 in apart; at most 1/8 in is wanted
  new: warning cut/under-half: 10 pieces along the top are 1 11/16 in high; half a tile, 2 in, is wanted
Smallest cut, cut pieces
  smallest cut: 4 in x 2 in -> 4 in x 1 11/16 in
  cut pieces: 10 -> 15
Alignments
  lost: a joint on the centre line of the wall
Quantities
  tile field: 60 -> 55 tiles needed, 5 fewer; still 3 boxes
  grout 12.6 cu in -> 18.8 cu in
Pieces
  44 pieces only moved, by at most 1/2 in across and 1/4 in up or down
  15 pieces cut differently`,
    );
  });

  it("a moved niche", () => {
    assert.equal(
      summaryOf(WALL, ["at 16 5/8, 8 3/8", "at 17 5/8, 8 3/8"]),
      `What moved
  niche shelf moves right 1 in
Cuts that changed
  1 piece right of niche shelf: whole -> 3 in wide, in course 3
  1 new piece left of niche shelf: 7/8 in wide, in course 3
Findings
  new: error cut/sliver: 1 piece left of niche shelf is 7/8 in wide; at least 1 11/32- in is wanted
  new: warning opening/off-joint: niche shelf is off the joints: its left by 1 in, its right by 1 in; each side on a joint is wanted
Smallest cut, cut pieces
  smallest cut: 4 in x 2 in -> 7/8 in x 4 in
  cut pieces: 10 -> 12
Alignments
  lost: the left and right of niche shelf on joints
  lost: a joint on the centre line of niche shelf
Quantities
  grout 11.7 cu in -> 11.8 cu in
Pieces
  1 piece cut differently
  1 piece new`,
    );
  });

  it("courses moved up: what is whole is moved, not new", () => {
    assert.equal(
      summaryOf(PLAIN, ["full course from bottom", "joint at 6 3/16"]),
      `What moved
  up: full course from bottom -> joint at 6 3/16
  all courses move up 2 in
Cuts that changed
  10 new pieces along the bottom: 1 7/8 in high, in course 1
  10 pieces gone along the top: 2 in high, in course 6
Findings
  new: warning cut/under-half: 10 pieces along the bottom are 1 7/8 in high; half a tile, 2 in, is wanted
Smallest cut, cut pieces
  smallest cut: 4 in x 2 in -> 4 in x 1 7/8 in
Quantities
  tile field: 60 -> 55 tiles needed, 5 fewer; still 3 boxes
  grout 12.6 cu in -> 13.9 cu in
Pieces
  50 pieces only moved, up 2 in
  10 pieces new
  10 pieces gone`,
    );
  });

  it("another tile: the wall is laid anew", () => {
    assert.equal(
      summaryOf(PLAIN, ["face 4 x 4", "face 6 x 3"]),
      `What moved
  tile field, face: 4 in x 4 in -> 6 in x 3 in
Findings
  new: note balance/unequal-ends: the left end shows 6 in and the right end 4 3/8 in: 1 5/8 in apart; at most 1/8 in is wanted
  new: error cut/sliver: 7 pieces along the top are 3/4 in high; at least 1 in is wanted
Smallest cut, cut pieces
  smallest cut: 4 in x 2 in -> 6 in x 3/4 in
  cut pieces: 10 -> 14
Alignments
  lost: a joint on the centre line of the wall
Quantities
  tile field: 60 -> 53 tiles needed, 7 fewer; still 3 boxes
  grout 12.6 cu in -> 13.1 cu in
Pieces
  laid anew: 60 pieces before, 56 now`,
    );
  });

  it("a counter that is measured", () => {
    assert.equal(
      summaryOf(PLAIN, [
        "bottom counter movement",
        "bottom counter measured 0: 0, 41 3/8: 1/4 movement",
      ]),
      `What moved
  all courses move up a hair
  bottom at 0 in: now measured, 0 in
  bottom at 41 3/8 in: now measured, 1/4 in
Cuts that changed
  10 pieces along the bottom: whole -> scribed 4 in x 3 25/32- in to 4 in, in course 1
  10 pieces along the top: 2 in high -> 2- in high, in course 6
Findings
  new: warning cut/under-half: 10 pieces along the top are 2- in high; half a tile, 2 in, is wanted
Smallest cut, cut pieces
  smallest cut: 4 in x 2 in -> 4 in x 2- in
  cut pieces: 10 -> 20
Quantities
  mortar 6.5 sq ft -> 6.4 sq ft
Pieces
  40 pieces only moved, up a hair
  20 pieces cut differently`,
    );
  });

  it("another bond", () => {
    assert.equal(
      summaryOf(PLAIN, ["bond stack", "bond running 1/2"]),
      `What moved
  courses move by their place in the bond: left 2 1/16 in or not at all
  bond: stack -> running 1/2
Cuts that changed
  2 pieces at the left end: whole -> 1 15/16 in wide, in courses 2 and 4
  1 piece at the left end, along the top (was along the top): 4 in wide -> 1 15/16 in wide, in course 6
  2 new pieces at the right end: 1 15/16 in wide, in courses 2 and 4
  1 new piece at the right end, along the top: 1 15/16 in x 2 in, in course 6
Smallest cut, cut pieces
  smallest cut: 4 in x 2 in -> 1 15/16 in x 4 in
  cut pieces: 10 -> 15
Quantities
  grout 12.6 cu in -> 12.9 cu in
Pieces
  27 pieces only moved, left 2 1/16 in
  3 pieces cut differently
  3 pieces new`,
    );
  });

  it("a wider wall", () => {
    assert.equal(
      summaryOf(PLAIN, ["size 41 3/8", "size 43 3/8"]),
      `What moved
  size: 41 3/8 in x 22 7/8 in -> 43 3/8 in x 22 7/8 in
Cuts that changed
  5 new pieces at the right end: 1 7/8 in wide, in courses 1 to 5
  1 new piece at the right end, along the top: 1 7/8 in x 2 in, in course 6
Findings
  new: note balance/unequal-ends: the left end shows 4 in and the right end 1 7/8 in: 2 1/8 in apart; at most 1/8 in is wanted
  new: warning cut/under-half: 6 pieces at the right end are 1 7/8 in wide; half a tile, 2 in, is wanted
Smallest cut, cut pieces
  smallest cut: 4 in x 2 in -> 1 7/8 in x 4 in
  cut pieces: 10 -> 16
Alignments
  lost: a joint on the centre line of the wall
Quantities
  mortar 6.5 sq ft -> 6.8 sq ft; grout 12.6 cu in -> 13.6 cu in; sealant 2.0 cu in -> 2.1 cu in
Pieces
  6 pieces new`,
    );
  });

  it("a taller niche", () => {
    assert.equal(
      summaryOf(WALL, ["size 8 1/8 x 4", "size 8 1/8 x 8 1/8"]),
      `What moved
  niche shelf: 8 1/8 in x 4 in -> 8 1/8 in x 8 1/8 in
Quantities
  tile field: 58 -> 56 tiles needed, 2 fewer; still 3 boxes
  mortar 6.2 sq ft -> 6 sq ft; grout 11.7 cu in -> 11.1 cu in; sealant 2.4 cu in -> 2.5 cu in
Pieces
  2 pieces gone`,
    );
  });

  it("a niche left out", () => {
    assert.equal(
      printed(WALL, PLAIN),
      `What moved
  niche shelf is gone
Quantities
  tile field: 58 -> 60 tiles needed, 2 more; still 3 boxes
  mortar 6.2 sq ft -> 6.5 sq ft; grout 11.7 cu in -> 12.6 cu in; sealant 2.4 cu in -> 2.0 cu in
Pieces
  2 pieces new`,
    );
  });

  it("a window with a frame", () => {
    assert.equal(
      printed(WALL, WINDOW),
      `What moved
  window light is new
  trim nose is new
Cuts that changed
  2 pieces left of window light: whole -> 2 in wide, in courses 4 and 5
  2 pieces right of window light: whole -> 2 1/8 in wide, in courses 4 and 5
Findings
  new: warning joint/trim-clash: 1 joint at the bottom of the frame of window light stands 0 in off a field joint; in line with it, or at least 1/2 in clear of it, is wanted
  new: warning joint/trim-clash: 1 joint at the top of the frame of window light stands 0 in off a field joint; in line with it, or at least 1/2 in clear of it, is wanted
  new: note balance/unequal-ends: the left end shows 3 11/32- in and the right end 4 in: 21/32+ in apart; at most 1/8 in is wanted
Smallest cut, cut pieces
  smallest cut: 4 in x 2 in -> 2 in x 4 in
  cut pieces: 10 -> 14
Quantities
  tile field: 58 -> 54 tiles needed, 4 fewer; still 3 boxes
  trim nose: 0 -> 6 lengths needed, 6 more
  mortar 6.2 sq ft -> 6 sq ft; grout 11.7 cu in -> 11.8 cu in; sealant 2.4 cu in -> 2.8 cu in
Pieces
  4 pieces cut differently
  4 pieces gone`,
    );
  });

  it("a wall of another name", () => {
    assert.equal(
      summaryOf(WALL, ["wall back", "wall rear"]),
      `What moved
  wall back is now called rear`,
    );
  });

  it("a tile of another name", () => {
    assert.equal(
      summaryOf(WALL, ["tile field", "tile white"], ["lay field", "lay white"]),
      `What moved
  tile field is now called white`,
    );
  });

  it("a thicker tile in larger boxes", () => {
    assert.equal(
      summaryOf(
        WALL,
        ["box 25", "box 30"],
        ["thickness 1/4\n  variation", "thickness 5/16\n  variation"],
      ),
      `What moved
  tile field, thickness: 1/4 in -> 5/16 in
  tile field, box: 25 -> 30
Quantities
  tile field: 58 -> 58 tiles needed, as many; boxes 3 -> 2
  grout 11.7 cu in -> 14.6 cu in`,
    );
  });

  it("a wider soft joint", () => {
    assert.equal(
      summaryOf(PLAIN, ["top ceiling movement 1/8", "top ceiling movement 1/4"]),
      `What moved
  top, soft joint: 1/8 in -> 1/4 in
Cuts that changed
  10 pieces along the top: 2 in high -> 1 7/8 in high, in course 6
Findings
  new: warning cut/under-half: 10 pieces along the top are 1 7/8 in high; half a tile, 2 in, is wanted
Smallest cut, cut pieces
  smallest cut: 4 in x 2 in -> 4 in x 1 7/8 in
Quantities
  tile field: 60 -> 55 tiles needed, 5 fewer; still 3 boxes
  mortar 6.5 sq ft -> 6.4 sq ft; sealant 2.0 cu in -> 2.7 cu in
Pieces
  10 pieces cut differently`,
    );
  });

  it("a finding waived", () => {
    assert.equal(
      printed(NARROW, WAIVED),
      `Findings
  waived: error joint/too-narrow: the joint is 1/8 in; at least 3/16 in, 3 x the 1/16 in by which the tile varies, is wanted (reason: a dry run looked well)`,
    );
  });

  it("a waiver taken back", () => {
    assert.equal(
      printed(WAIVED, NARROW),
      `Findings
  no longer waived: error joint/too-narrow: the joint is 1/8 in; at least 3/16 in, 3 x the 1/16 in by which the tile varies, is wanted`,
    );
  });

  it("courses that do not meet in the corner any more", () => {
    assert.equal(
      summaryOf(CORNER, [
        "full tile from left\n    up joint at 4 3/16",
        "full tile from left\n    up joint at 4 11/16",
      ]),
      `What moved
  side: up: joint at 4 3/16 -> joint at 4 11/16
  side: all courses move up 1/2 in
Cuts that changed
  side: 3 pieces along the top: whole -> 3 1/2 in high, in course 4
  side: 1 piece at the right end, along the top (was at the right end): 4 in high -> 3 1/2 in high, in course 4
  side: 3 new pieces along the bottom: 3/8 in high, in course 1
  side: 1 new piece at the right end, along the bottom: 3 5/8 in x 3/8 in, in course 1
Findings
  side: new: warning corner/courses-miss: at the right corner the courses are 1/2 in above those of back; courses that meet are wanted
  side: new: error cut/sliver: 4 pieces along the bottom are 3/8 in high; at least 1 11/32- in is wanted
Smallest cut, cut pieces
  side: smallest cut: 3 5/8 in x 4 in -> 4 in x 3/8 in
  side: cut pieces: 3 -> 10
Alignments
  side: lost: the courses meet those of back
Quantities
  grout 6.8 cu in -> 7.3 cu in
Pieces
  side: 8 pieces only moved, up 1/2 in
  side: 4 pieces cut differently
  side: 4 pieces new`,
    );
  });

  it("a hole for a spout", () => {
    assert.equal(
      summaryOf(PLAIN, ["  lay field {", "  hole spout at 20 3/4, 6 across 1 1/2\n  lay field {"]),
      `What moved
  hole spout is new
Cuts that changed
  2 pieces round hole spout: whole -> 4 in x 4 in with its hole, in course 2
Smallest cut, cut pieces
  cut pieces: 10 -> 12
Quantities
  mortar 6.5 sq ft -> 6.4 sq ft
Pieces
  2 pieces cut differently`,
    );
  });

  it("a smaller hole elsewhere", () => {
    assert.equal(
      summaryOf(HOLE, ["at 22 3/4, 6 across 1 1/2", "at 23 3/4, 7 across 1 1/4"]),
      `What moved
  hole spout moves right 1 in and up 1 in
  hole spout, diameter: 1 1/2 in -> 1 1/4 in
Cuts that changed
  1 piece round hole spout: 4 in x 4 in with its hole, of another shape, in course 2
Findings
  new: warning hole/near-edge: hole spout leaves 3/8 in to the edge of 1 piece; at least 1/2 in is wanted
Quantities
  mortar 6.4 sq ft -> 6.5 sq ft
Pieces
  1 piece cut differently`,
    );
  });

  it("a mitred frame that reaches into the window", () => {
    assert.equal(
      summaryOf(WINDOW, ["frame nose butt", "frame nose mitre\n    inset 1/4"]),
      `What moved
  window light, frame: nose butt -> nose mitre
  window light, inset: 0 in -> 1/4 in
Cuts that changed
  1 piece at a corner of window light (was left of window light): 2 in wide -> L cut 4 in x 4 in less 1 3/4 in x 3 7/8 in, in course 4
  1 piece at a corner of window light (was right of window light): 2 1/8 in wide -> L cut 4 in x 4 in less 1 5/8 in x 3 7/8 in, in course 4
  1 piece at a corner of window light (was left of window light): 2 in wide -> L cut 4 in x 4 in less 1 3/4 in x 3 3/4 in, in course 5
  1 piece at a corner of window light (was right of window light): 2 1/8 in wide -> L cut 4 in x 4 in less 1 5/8 in x 3 3/4 in, in course 5
  2 new pieces under window light: 1/8 in high, in course 4
  2 new pieces over window light: 1/4 in high, in course 5
Findings
  new: error cut/sliver: 2 pieces under window light are 1/8 in high; at least 1 11/32- in is wanted
  new: error cut/sliver: 2 pieces over window light are 1/4 in high; at least 1 11/32- in is wanted
  new: warning cut/thin-leg: 2 pieces keep a leg 1/8 in high under window light; at least 1 11/32- in is wanted
  new: warning cut/thin-leg: 2 pieces keep a leg 1/4 in high over window light; at least 1 11/32- in is wanted
  new: warning joint/trim-clash: 1 joint at the left of the frame of window light stands 0 in off a field joint; in line with it, or at least 1/2 in clear of it, is wanted
  new: warning joint/trim-clash: 1 joint at the right of the frame of window light stands 0 in off a field joint; in line with it, or at least 1/2 in clear of it, is wanted
  gone: note balance/unequal-ends: the left end shows 3 11/32- in and the right end 4 in: 21/32+ in apart; at most 1/8 in is wanted
Smallest cut, cut pieces
  smallest cut: 2 in x 4 in -> 4 in x 1/8 in
  cut pieces: 14 -> 18
Alignments
  lost: the bottom and top of window light on joints
Quantities
  trim nose: 6 -> 8 lengths needed, 2 more
  grout 11.8 cu in -> 12.4 cu in; sealant 2.8 cu in -> 2.7 cu in
Pieces
  4 pieces cut differently
  4 pieces new`,
    );
  });

  it("a higher ceiling", () => {
    assert.equal(
      summaryOf(PLAIN, ["x 22 7/8", "x 27"]),
      `What moved
  size: 41 3/8 in x 22 7/8 in -> 41 3/8 in x 27 in
Cuts that changed
  10 pieces along the top: 2 in high -> whole, in course 6
  10 new pieces along the top: 2 in high, in course 7
Quantities
  tile field: 60 -> 70 tiles needed, 10 more; still 3 boxes
  mortar 6.5 sq ft -> 7.6 sq ft; grout 12.6 cu in -> 15.0 cu in; sealant 2.0 cu in -> 2.1 cu in
Pieces
  10 pieces cut differently
  10 pieces new`,
    );
  });

  it("limits of one's own", () => {
    assert.equal(
      summaryOf(PLAIN, ["bed 1/8", "bed 3/16\nrules { sliver 2 1/4, half off }"]),
      `What moved
  bed: 1/8 in -> 3/16 in
  rules, sliver: as usual -> 2 1/4 in
  rules, half: as usual -> off
Findings
  new: error cut/sliver: 10 pieces along the top are 2 in high; at least 2 1/4 in is wanted`,
    );
  });

  it("a lot that measures less", () => {
    assert.equal(
      summaryOf(PLAIN, ["face 4 x 4", "face 3 15/16 x 3 15/16"]),
      `What moved
  tile field, face: 4 in x 4 in -> 3 15/16 in x 3 15/16 in
Cuts that changed
  10 pieces along the top: 2 in high -> 2 5/16 in high, in course 6
  5 new pieces at the right end: 1/2 in wide, in courses 1 to 5
  1 new piece at the right end, along the top: 1/2 in x 2 5/16 in, in course 6
Findings
  new: note balance/unequal-ends: the left end shows 3 15/16 in and the right end 1/2 in: 3 7/16 in apart; at most 1/8 in is wanted
  new: error cut/sliver: 6 pieces at the right end are 1/2 in wide; at least 1 5/16 in is wanted
Smallest cut, cut pieces
  smallest cut: 4 in x 2 in -> 1/2 in x 3 15/16 in
  cut pieces: 10 -> 16
Alignments
  lost: a joint on the centre line of the wall
Quantities
  grout 12.6 cu in -> 13.3 cu in
Pieces
  50 pieces only moved, by at most 9/16 in across and 1/4 in up or down
  10 pieces cut differently
  6 pieces new`,
    );
  });

  it("a start centred on the wall", () => {
    assert.equal(
      summaryOf(PLAIN, ["full tile from left", "tile centred on wall"]),
      `What moved
  across: full tile from left -> tile centred on wall
  all courses move left 2 1/16 in
Cuts that changed
  5 pieces at the left end: whole -> 1 15/16 in wide, in courses 1 to 5
  1 piece at the left end, along the top (was along the top): 4 in wide -> 1 15/16 in wide, in course 6
  5 new pieces at the right end: 1 15/16 in wide, in courses 1 to 5
  1 new piece at the right end, along the top: 1 15/16 in x 2 in, in course 6
Findings
  new: warning cut/under-half: 6 pieces at the left end are 1 15/16 in wide; half a tile, 2 in, is wanted
  new: warning cut/under-half: 6 pieces at the right end are 1 15/16 in wide; half a tile, 2 in, is wanted
Smallest cut, cut pieces
  smallest cut: 4 in x 2 in -> 1 15/16 in x 4 in
  cut pieces: 10 -> 21
Alignments
  gained: a tile on the centre line of the wall
  lost: a joint on the centre line of the wall
Quantities
  grout 12.6 cu in -> 13.3 cu in
Pieces
  54 pieces only moved, left 2 1/16 in
  6 pieces cut differently
  6 pieces new`,
    );
  });

  it("a corner that is mitred in place of lapped, and the way back", () => {
    const section = (before: string, after: string) =>
      summarise(comparisonOf(before, after)).find(({ title }) => title.startsWith("Smallest cut"))!
        .lines;
    // Eight courses on each wall; the pier's ends change, since its tile now goes to the outer face.
    assert.deepEqual(
      section(outsideText(), mitredText()).filter((line) => line.includes("mitred")),
      ["back: mitred edges: 0 -> 8", "pier: mitred edges: 0 -> 8"],
    );
    assert.deepEqual(
      section(mitredText(), outsideText()).filter((line) => line.includes("mitred")),
      ["back: mitred edges: 8 -> 0", "pier: mitred edges: 8 -> 0"],
    );
  });

  it("nothing but comments and blanks", () => {
    assert.equal(
      summaryOf(
        WALL,
        ["units inch", "units inch  # as on the tape"],
        ["  bottom counter", "\n\n  bottom   counter"],
      ),
      "",
    );
  });
});

describe("a headline", () => {
  it("says the weightiest", () => {
    const moved = comparisonOf(WALL, edited(WALL, ["at 16 5/8, 8 3/8", "at 17 5/8, 8 3/8"]));
    assert.equal(headline(moved), "1 piece cut differently, 1 new, 2 new findings");
    assert.equal(headline(comparisonOf(WALL, WALL)), "nothing changed but the text");
  });
});
