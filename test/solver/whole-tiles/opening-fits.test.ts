import assert from "node:assert/strict";
import { exactLength } from "../../../src/measure/index.js";
import type { OpeningFit } from "../../../src/solver/index.js";
import { fitted, nichePlan } from "./niche-plan.js";

/** `at X, Y size W x H`, in inches. */
function words(fit: OpeningFit | null): string | null {
  if (!fit) return null;
  const inches = [fit.at.x, fit.at.y, fit.size.across, fit.size.up];
  const [x, y, across, up] = inches.map((nm) => exactLength(nm, "inch"));
  return `at ${x}, ${y} size ${across} x ${up}`;
}

const niche = (at: string, size: string, more = ""): string =>
  `niche n {\n at ${at}\n size ${size}\n ${more}\n}`;

const fits = (opening: string, lay?: string, bond?: string) =>
  fitted(nichePlan(opening, lay, bond)).fits!;

describe("openingFits", () => {
  it("gives one tile at 1/8 the opening 12 1/4, and moves it from joint to joint", () => {
    // Tiles end at 12, 24 1/8 ... and 6, 12 1/8 ...: the niche takes one across and two up.
    const { isOn, moved, sized } = fits(niche("13, 13", "12 1/4 x 12 3/8"));
    assert.equal(isOn, false);
    assert.equal(words(moved), "at 12, 12 1/8 size 12 1/4 x 12 3/8");
    assert.deepEqual(moved!.tiles, { across: 1, up: 2 });
    assert.equal(words(sized), words(moved));
    assert.deepEqual(moved!.joints, { beside: [3, 4], met: [3, 4] });
  });

  it("is on the joints when it stands so", () => {
    assert.equal(fits(niche("12, 12 1/8", "12 1/4 x 12 3/8")).isOn, true);
  });

  it("takes the movement joint off the opening's size", () => {
    const { sized } = fits(niche("13, 13", "12 x 12", "movement 1/16"));
    assert.equal(words(sized), "at 12 1/16, 12 3/16 size 12 1/8 x 12 1/4");
  });

  it("takes the frame and its joint off the opening's size", () => {
    // The frame is 1 in wide and stands 1/4 in inside: 3/4 in outside, and a joint of 1/8.
    const frame = "frame nose mitre\n inset 1/4";
    const { sized } = fits(niche("14, 14", "10 x 10", frame));
    assert.equal(words(sized), "at 12 7/8, 13 size 10 1/2 x 10 5/8");
  });

  it("only sizes one whose size can't have both sides on joints", () => {
    const { moved, sized } = fits(niche("13, 13", "14 x 14"));
    assert.equal(moved, null);
    assert.deepEqual(sized!.tiles, { across: 1, up: 2 });
  });

  it("tells the sizes next to its own that take whole tiles", () => {
    const { sizes } = fits(niche("13, 13", "14 x 14", "movement 1/16"));
    const inches = (list: typeof sizes.up): string[] =>
      list.map(({ tiles, size }) => `${tiles}: ${exactLength(size, "inch")}`);
    assert.deepEqual(inches(sizes.across), ["1: 12 1/8", "2: 24 1/4"]);
    assert.deepEqual(inches(sizes.up), ["1: 6 1/8", "2: 12 1/4", "3: 18 3/8"]);
  });

  it("says in a running bond in which courses its upright sides meet joints", () => {
    const { moved } = fits(niche("13, 13", "12 1/4 x 12 3/8"), undefined, "running 1/2");
    assert.deepEqual(moved!.joints, { beside: [3, 4], met: [3] });
  });

  it("takes the nearest of the courses beside it: the other ones' joints are half a tile away", () => {
    const { moved } = fits(niche("17, 13", "12 1/4 x 12 3/8"), undefined, "running 1/2");
    // Course 4 has a joint at 12 + 6 1/16.
    assert.equal(words(moved), "at 18 1/16, 12 1/8 size 12 1/4 x 12 3/8");
    assert.deepEqual(moved!.joints.met, [4]);
  });

  it("keeps the middle that a lay is centred on, and takes a number of tiles that suits it", () => {
    const lay = (kind: string): string =>
      `across ${kind} centred on n\n up full course from bottom`;
    const onTile = fits(niche("20, 13", "21 x 12 3/8"), lay("tile"));
    assert.equal(onTile.moved, null);
    // One tile, or three: 12 1/4 is nearer to 21 than 36 1/2; the middle is 30 1/2.
    assert.equal(words(onTile.sized), "at 24 3/8, 12 1/8 size 12 1/4 x 12 3/8");
    const onJoint = fits(niche("20, 13", "21 x 12 3/8"), lay("joint"));
    assert.equal(words(onJoint.sized), "at 18 5/16, 12 1/8 size 24 3/8 x 12 3/8");
  });

  it("keeps the side that the courses start at", () => {
    const lay = (relation: string): string =>
      `across full tile from left\n up full course ${relation} n`;
    const under = fits(niche("13, 13", "12 1/4 x 11"), lay("under"));
    assert.equal(words(under.sized), "at 12, 13 size 12 1/4 x 12 3/8");
    const over = fits(niche("13, 13", "12 1/4 x 11"), lay("over"));
    assert.equal(words(over.sized), "at 12, 11 5/8 size 12 1/4 x 12 3/8");
  });

  it("has no place where another opening or a hole is", () => {
    const other = niche("13, 13", "12 1/4 x 12 3/8");
    const beside = fits(`${other}\n hole tap at 12 1/8, 20 across 1`);
    assert.deepEqual([beside.moved, beside.sized], [null, null]);
  });

  it("leaves doors and what reaches the side of the tile alone", () => {
    assert.equal(fitted(nichePlan("door d {\n at 13, 0\n size 30 x 50\n}")).fits, null);
    assert.equal(fitted(nichePlan(niche("0, 13", "12 x 12"))).fits, null);
  });

  it("is exact to the nanometre", () => {
    const { moved, isOn } = fits(niche("12in, 12 1/8", "12 1/4 x 12 3/8"));
    assert.deepEqual([isOn, words(moved)], [true, "at 12, 12 1/8 size 12 1/4 x 12 3/8"]);
    const off = fits(niche("304.799999mm, 12 1/8", "12 1/4 x 12 3/8"));
    assert.deepEqual([off.isOn, words(off.moved)], [false, words(moved)]);
  });
});
