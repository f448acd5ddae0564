import assert from "node:assert/strict";
import { findings, messages, WALLS, type WallText } from "./wall-text.js";

const CODE = "cut/sliver";
/** Two whole tiles across, and a third of this width; three courses. */
const third = (width: string): WallText => ({ size: `12 1/4 + ${width} x 9 1/4` });
/** Four whole tiles across; two whole courses and a third of this height. */
const course = (height: string): WallText => ({ size: `24 3/8 x 6 1/4 + ${height}` });

describe("cut/sliver", () => {
  it("tells a width one nanometre under a third of the tile, and is silent at a third", () => {
    assert.deepEqual(messages(third("2 - nm"), CODE), [
      "3 pieces at the right end are 2- in wide; at least 2 in is wanted",
    ]);
    assert.deepEqual(messages(third("2"), CODE), []);
  });

  it("tells a height one nanometre under an inch where that is more than a third", () => {
    const low = { ...course("1 - nm"), face: "6 x 2" };
    const at = { ...course("1"), face: "6 x 2" };
    const wall = (height: string) => ({ size: `24 3/8 x 4 1/4 + ${height}` });
    assert.deepEqual(messages({ ...low, ...wall("1 - nm") }, CODE), [
      "4 pieces along the top are 1- in high; at least 1 in is wanted",
    ]);
    assert.deepEqual(messages({ ...at, ...wall("1") }, CODE), []);
  });

  it("tells one finding for each cause, with the pieces concerned, at the lay", () => {
    const found = findings({ size: "12 3/4 x 6 3/4" }, CODE);
    assert.deepEqual(
      found.map(({ message, pieces }) => [message, pieces]),
      [
        [
          "3 pieces at the right end are 1/2 in wide; at least 2 in is wanted",
          ["back/1/3", "back/2/3", "back/3/3"],
        ],
        [
          "3 pieces along the top are 1/2 in high; at least 1 in is wanted",
          ["back/3/1", "back/3/2", "back/3/3"],
        ],
      ],
    );
    assert.equal(found[0]!.severity, "error");
    assert.equal(found[0]!.wall, "back");
    assert.equal(found[0]!.source, "common practice");
  });

  it("names the opening that cuts, and speaks at it", () => {
    const window = "window sash {\n at 7 5/8, 3 1/8\n size 4 x 6\n movement 1/8\n}";
    const [found] = findings(
      { wall: window, start: "across full tile from left\nup joint at 0" },
      CODE,
    );
    assert.match(found!.message, /left of window sash (is|are) 1 3\/8 in wide; at least 2 in/);
    assert.ok(found!.range.start.line > 15 && found!.range.start.line < 25);
  });

  it("names both causes of a piece that is cut at both sides", () => {
    const narrow = {
      size: "1 1/2 x 3",
      start: "across tile centred on wall\nup full course from bottom",
    };
    assert.deepEqual(messages(narrow, CODE), [
      "1 piece between the left end and the right end is 1 1/2 in wide; at least 2 in is wanted",
    ]);
  });

  it("gives the least and the most where sizes differ", () => {
    const sloped = {
      ...third("1"),
      edges: "left free\nright free measured 0: 0, 9 1/4: 1/2\nbottom free\ntop free",
    };
    assert.match(
      messages(sloped, CODE)[0]!,
      /^3 pieces at the right end are 1 in to 1 \d+\/32[+-]? in wide/,
    );
  });

  it("holds what another wall's tile leaves to be seen", () => {
    const side = (thickness: string) => `
wall side "Side wall" {
  size 12 x 9 1/4
  right corner back over movement 1/8
  lay thin {
    bond stack
    joint 1/8
  }
}
tile thin "thin tile" {
  face 6 x 3
  thickness ${thickness}
}`;
    const edges = "left corner side under movement 1/8\nright free\nbottom free\ntop free";
    // The first piece runs from 1/8 to 2 3/8 in; tile and bed of the side wall hide it up to 3/8 in.
    const start = "across tile centred at 5 1/2\nup full course from bottom";
    const covered = (thickness: string) =>
      messages({ plan: side(thickness), edges, start, size: "24 x 9 1/4" }, CODE).filter(
        (message) => message.includes("left end"),
      );
    assert.deepEqual(covered("1/4"), []);
    assert.deepEqual(covered("1/4 + nm"), [
      "3 pieces at the left end are 2- in wide; at least 2 in is wanted",
    ]);
  });

  it("reads in the plan's units, also where found and wanted would read alike", () => {
    const metric = { ...third("2in - nm"), units: "mm", size: "12.25in + 2in - nm x 3in" };
    const text = {
      ...metric,
      face: "6in x 3in",
      joint: "1/8in",
      edges: "left free\nright free\nbottom free\ntop free",
    };
    assert.deepEqual(messages(text, CODE), [
      "1 piece at the right end is just under 50.8 mm wide; at least 50.8 mm is wanted",
    ]);
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    assert.equal(messages({ ...third("2"), plan: "rules {\n sliver 2 + nm\n}" }, CODE).length, 1);
    assert.equal(messages({ ...third("1"), plan: "rules {\n sliver 1\n}" }, CODE).length, 0);
    assert.equal(messages({ ...third("1/2"), plan: "rules {\n sliver off\n}" }, CODE).length, 0);
  });

  it("is silenced, with the reason kept, by an allow in the lay, the tile, the wall or the plan", () => {
    const allow = 'allow cut/sliver "behind the door"';
    for (const place of ["lay", "tile", "wall", "plan"] as const) {
      const [found] = findings({ ...third("1"), [place]: allow }, CODE);
      assert.equal(found?.severity, "information", place);
      assert.equal(found.allowed, "behind the door", place);
    }
  });

  it("does not tell a whole tile, however small it is", () => {
    const mosaic = { face: "3/4 x 3/4", size: "6 7/8 x 6 7/8", edges: WALLS };
    const small = { ...mosaic, start: "across full tile from left\nup full course from bottom" };
    assert.deepEqual(messages({ ...small, size: "7 1/8 x 6 7/8" }, CODE), []);
  });
});
