import assert from "node:assert/strict";
import { cornerText, type CornerText } from "./corner-text.js";
import { findings, messages } from "./wall-text.js";

const CODE = "corner/bond-broken";

/** A side wall whose first tile is so wide; its tile begins 1/4 in from the back wall. */
const first = (width: string, more: CornerText = {}): string =>
  cornerText({ ...more, side: { across: `tile centred at 1/4 + ${width} - 3`, ...more.side } });

describe("corner/bond-broken", () => {
  it("tells a first tile that is neither wrapped, mirrored nor whole", () => {
    assert.deepEqual(messages(first("4 1/2"), CODE), [
      "from the left corner course 1 starts with 4 1/2 in beside 2 9/16 in of back; 3 7/16 in or 3 5/16 in " +
        "(wrapped, the corner's joint added or swallowed), 2 9/16 in (mirrored) or a whole tile (begun again) " +
        "is wanted, to within 1/8 in",
    ]);
  });

  it("is silent at 1/8 in from each, and tells one nanometre more", () => {
    // A bond that goes on may be off by as much as end cuts may differ: common practice.
    const silent = ["3 7/16 + 1/8", "3 5/16 - 1/8", "2 9/16 + 1/8", "2 9/16 - 1/8", "6"];
    for (const width of silent) assert.deepEqual(messages(first(width), CODE), [], width);
    const off = [
      "3 7/16 + 1/8 + nm",
      "3 5/16 - 1/8 - nm",
      "2 9/16 + 1/8 + nm",
      "2 9/16 - 1/8 - nm",
    ];
    for (const width of off) assert.equal(messages(first(width), CODE).length, 1, width);
    assert.equal(messages(first("6 - nm"), CODE).length, 1);
  });

  it("holds every course to one way: a running bond that runs back at the corner is mirrored", () => {
    // The ends are 2 9/16 and 5 19/32 in; course 1 of the side wall is set by its first tile.
    const running = { bond: "running 1/2" };
    assert.deepEqual(messages(first("2 9/16", running), CODE), []);
    assert.deepEqual(messages(first("3 7/16", running), CODE), []);
    assert.equal(messages(first("4 1/2", running), CODE).length, 1);
    // By thirds the ends go 2 9/16, 4 19/32, 1/2 in; mirrored they would have to run to the left.
    assert.match(messages(first("2 9/16", { bond: "running 1/3" }), CODE)[0]!, /course \d+ starts/);
  });

  it("is silent where the plan starts the wall with a whole tile at the corner", () => {
    assert.deepEqual(messages(cornerText({ side: { across: "full tile from left" } }), CODE), []);
  });

  it("leaves courses that miss to the rule of their own", () => {
    assert.deepEqual(messages(first("4 1/2", { side: { up: "joint at 1" } }), CODE), []);
  });

  it("speaks at the covering wall's corner, as information, of the pieces beside it", () => {
    const [found] = findings(first("4 1/2", { size: "60 x 6 1/16" }), CODE);
    assert.equal(found!.severity, "information");
    assert.equal(found!.source, "common practice");
    assert.equal(found!.wall, "side");
    assert.deepEqual(found!.pieces, ["side/1/1", "side/2/1"]);
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    const text = (rules: string): string => first("4 1/2", { plan: `rules {\n ${rules}\n}` });
    // 4 1/2 in is 1 1/16 in off the nearest.
    assert.equal(messages(text("wrap 1 1/16 - nm"), CODE).length, 1);
    assert.deepEqual(messages(text("wrap 1 1/16"), CODE), []);
    assert.deepEqual(messages(text("wrap off"), CODE), []);
  });

  it("is silenced by an allow in either wall", () => {
    const wall = 'allow corner/bond-broken "a cabinet hides the corner"';
    assert.ok(findings(first("4 1/2", { side: { wall } }), CODE)[0]!.allowed);
  });
});
