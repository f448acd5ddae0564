import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { sliverLimit } from "../../src/model/index.js";
import { findings, messages, WALLS, type WallText } from "../rules/wall-text.js";

const IN = NM_PER.inch;
const has = (parts: WallText, code: string): boolean => findings(parts, code).length > 0;

describe("published figures of the rules", () => {
  describe("joint width: ANSI A108.02 4.3.8, quoted in tileletter.com/what-is-minimum-grout-joint", () => {
    it("asks for 3/16 in where the face varies by 1/16 in", () => {
      const joint = (width: string) => ({ joint: width, tile: "variation 1/16" });
      assert.match(messages(joint("1/8"), "joint/too-narrow")[0]!, /at least 3\/16 in/);
      assert.equal(has(joint("3/16"), "joint/too-narrow"), false);
    });

    it("never takes less than 1/16 in", () => {
      assert.equal(has({ joint: "1/32", tile: "variation 0" }, "joint/too-narrow"), true);
      assert.equal(has({ joint: "1/16", tile: "variation 0" }, "joint/too-narrow"), false);
    });
  });

  describe("offset: ANSI A108.02 4.3.8.2, quoted in fcimag.com/articles/96103 and 94659", () => {
    it("takes a third at most where the offset side is over 15 in", () => {
      const laid = (face: string, bond: string) => ({ face, bond, size: "60 x 40" });
      assert.equal(has(laid("24 x 8", "running 1/2"), "bond/offset-over-third"), true);
      assert.equal(has(laid("24 x 8", "running 1/3"), "bond/offset-over-third"), false);
      assert.equal(has(laid("15 x 8", "running 1/2"), "bond/offset-over-third"), false);
    });
  });

  describe("joint of long tile: quoted in fcimag.com/articles/96103 and ctasc.com's head joint answer", () => {
    it("asks for 1/8 + 1/32 = 5/32 in of rectified tile that bows by 1/32 in", () => {
      const long = (joint: string) => ({
        face: "24 x 12",
        size: "60 x 40",
        bond: "running 1/3",
        tile: "edges rectified\nwarpage 1/32",
        joint,
      });
      assert.match(messages(long("1/8"), "joint/long-tile")[0]!, /at least 5\/32 in/);
      assert.equal(has(long("5/32"), "joint/long-tile"), false);
    });
  });

  describe("horizontal surfaces drain: fcimag.com/articles/93759; ANSI A108.01 3.6.4", () => {
    it("asks for 1 in over 48 in", () => {
      const bench = (fall: string) => ({
        size: "60 x 40",
        edges: "left free\nright free\ntop free\nbottom pan movement 1/8",
        wall: `bench seat {\n at 6\n size 20 x 18\n movement 1/8\n depth 48\n fall ${fall}\n}`,
      });
      assert.match(messages(bench("15/16"), "opening/flat-sill")[0]!, /so 1 in,/);
      assert.equal(has(bench("1"), "opening/flat-sill"), false);
    });
  });

  describe("soft joints: NTCA Reference Manual 2024-25 p. 23", () => {
    it("takes 25 ft in an interior, and 12 ft in moisture", () => {
      const field = (size: string, bottom: string) => ({
        face: "24 x 12",
        size,
        edges: `left free\nright free\ntop free\nbottom ${bottom} movement 1/8`,
      });
      assert.equal(has(field("25ft x 8ft", "floor"), "movement/too-far"), false);
      assert.equal(has(field("26ft x 8ft", "floor"), "movement/too-far"), true);
      assert.equal(has(field("12ft x 8ft", "pan"), "movement/too-far"), false);
      assert.equal(has(field("13ft x 8ft", "pan"), "movement/too-far"), true);
    });
  });

  describe("half a tile: ANSI A108.02 4.3.1 and 4.3.2, quoted in fcimag.com/articles/95138", () => {
    // One whole 24 in tile at the left leaves 1 1/2 in at the right; balanced, both ends are 12 3/4 in.
    const floor = (start: string) => ({
      face: "24 x 24",
      joint: "1/8",
      size: "49 3/4 x 24",
      start: `across ${start}\nup full course from bottom`,
    });

    it("tells the 1 1/2 in that a whole tile at the left leaves over", () => {
      assert.equal(has(floor("full tile from left"), "cut/sliver"), true);
    });

    it("passes the balanced 12 3/4 in", () => {
      const balanced = { ...floor("tile centred on wall"), edges: WALLS };
      assert.equal(has(balanced, "cut/sliver"), false);
      assert.equal(has(balanced, "cut/under-half"), false);
      assert.equal(has(balanced, "balance/unequal-ends"), false);
    });
  });

  describe("8 in tile on 60 x 72 in: mathforum.org/library/drmath/view/56485.html", () => {
    const wall = (joint: string): WallText => ({
      face: "8 x 8",
      joint,
      size: "60 x 72",
      start: "across joint centred on wall\nup joint at 36",
    });

    it("cuts half tiles of 4 in without joints, which the half rule takes", () => {
      assert.equal(has(wall("0"), "cut/under-half"), false);
    });

    it("cuts 3 7/16 in with joints of 1/8 in, which it does not take (derived)", () => {
      assert.deepEqual(messages(wall("1/8"), "cut/under-half"), [
        "8 pieces along the bottom are 3 7/16 in high; half a tile, 4 in, is wanted",
        "8 pieces along the top are 3 7/16 in high; half a tile, 4 in, is wanted",
      ]);
    });
  });

  describe("soft joints: TCNA EJ171; fcimag.com/articles/84636; at windows and pans common practice", () => {
    const left = (edge: string) => ({ edges: `left ${edge}\nright free\nbottom free\ntop free` });

    it("stand at inside corners and at other materials", () => {
      for (const meets of ["wall", "ceiling", "floor", "pan", "tub", "counter"])
        assert.equal(has(left(meets), "movement/missing"), true, meets);
    });

    it("are never under 1/8 in, though setters leave 1/16 in at a window or a pan too", () => {
      const severity = (edge: string) => findings(left(edge), "movement/narrow")[0]?.severity;
      assert.equal(severity("wall movement 1/8"), undefined);
      assert.equal(severity("wall movement 1/16"), "warning");
      assert.equal(severity("pan movement 1/16"), "information");
      assert.equal(severity("pan movement 1/32"), "warning");
    });
  });

  describe("what setters take beside a window, and what they avoid (common practice)", () => {
    it("takes 5/6, 3/4 and 1/2 of the tile", () => {
      assert.ok(2.5 * IN >= sliverLimit(3 * IN, {}));
      assert.ok(2.25 * IN >= sliverLimit(3 * IN, {}));
      const half = { bond: "running 1/2", size: "12 1/4 + 3 x 6 1/8" };
      assert.equal(has(half, "cut/sliver") || has(half, "cut/under-half"), false);
    });

    it("tells 1 in of a tile of 6 in", () => {
      assert.equal(has({ bond: "running 1/2", size: "12 1/4 + 1 x 3" }, "cut/sliver"), true);
    });
  });

  describe('tapers: en.allconstructions.com "Ceramic Tile Basics"', () => {
    const tapered = (narrow: string): WallText => ({
      units: "mm",
      face: "150 x 300",
      joint: "3",
      size: "150 x 900",
      edges: `left free\nright free\nbottom pan measured 0: 0, 150: 5 movement 3\ntop free`,
      start: `across full tile from left\nup joint at 3 + 5 + ${narrow} + 1.5`,
    });

    it("hides 5 mm in 140 mm", () => {
      assert.equal(has(tapered("140"), "cut/taper"), false);
    });

    it("shows 5 mm in 20 mm", () => {
      assert.match(messages(tapered("20"), "cut/taper")[0]!, /by 5 mm where 20 mm is left/);
    });
  });

  describe("the covered end of a lapped corner (derived)", () => {
    it("shows 5 1/4 in of a cut of 5 9/16 in under a build of 7/16 in with a gap of 1/8 in", () => {
      const covered = (limit: string): WallText => ({
        plan: `rules {\n sliver ${limit}\n}
wall side "Side wall" {
  size 12 x 9
  right corner back over movement 1/8
  lay field {
    bond stack
    joint 1/8
  }
}`,
        edges: "left corner side under movement 1/8\nright free\nbottom free\ntop free",
        size: "30 x 3",
        // A tile begins one joint past the cut's end.
        start: "across joint centred at 1/8 + 5 9/16 + 1/16\nup full course from bottom",
      });
      const ends = (limit: string) =>
        messages(covered(limit), "cut/sliver").filter((message) => message.includes("left end"));
      assert.deepEqual(ends("5 1/4"), []);
      assert.deepEqual(ends("5 1/4 + nm"), [
        "1 piece at the left end is 5 1/4 in wide; at least 5 1/4+ in is wanted",
      ]);
    });
  });
});
