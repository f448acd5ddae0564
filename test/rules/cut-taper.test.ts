import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

const CODE = "cut/taper";
/** Tile 5 1/2 in high over a pan that rises by `rise` along the first tile, then stays level. */
const pan = (rise: string) => ({
  face: "6 x 5 1/2",
  size: "24 3/8 x 17",
  edges: `left free\nright free\nbottom pan measured 0: 0, 6: ${rise} movement 1/8\ntop free`,
});

describe("cut/taper", () => {
  it("tells a taper one nanometre over a tenth of the narrow end, and is silent at it", () => {
    // 1/2 in over 6 in leaves 5 in at the narrow end.
    assert.deepEqual(messages(pan("1/2"), CODE), []);
    assert.deepEqual(messages(pan("1/2 + nm"), CODE), [
      "1 piece along the bottom tapers by 1/2+ in where 5- in is left at the narrow end; " +
        "at most 1/10 of that is wanted",
    ]);
  });

  it("tells the worst of several, at the side's own statement", () => {
    const edges =
      "left free\nright wall measured 0: 0, 3: 1/2, 17: -1/4 movement 1/8\nbottom free\ntop free";
    const [found] = findings({ face: "6 x 3", size: "20 x 17", edges }, CODE);
    assert.match(found!.message, /along the right taper, the worst by/);
    assert.equal(found!.severity, "warning");
    assert.match(found!.source!, /Ceramic Tile Basics/);
  });

  it("does not count what the slope leaves outside the tile", () => {
    const edges = "left free\nright free\nbottom pan measured 0: -6, 6: 0 movement 1/8\ntop free";
    const start = "across full tile from left\nup joint at 1/16";
    assert.deepEqual(
      messages({ ...pan(""), edges, start }, CODE).filter((m) => m.includes("by 6")),
      [],
    );
  });

  it("follows the plan's own limit, and is silent when that is off", () => {
    const steep = pan("1");
    assert.equal(messages(steep, CODE).length, 1);
    assert.equal(messages({ ...steep, plan: "rules {\n taper 2/9\n}" }, CODE).length, 0);
    assert.equal(messages({ ...steep, plan: "rules {\n taper 1/5\n}" }, CODE).length, 1);
    assert.equal(messages({ ...steep, plan: "rules {\n taper off\n}" }, CODE).length, 0);
  });

  it("is silenced by an allow in the wall", () => {
    const wall = 'allow cut/taper "a bench stands before it"';
    assert.equal(findings({ ...pan("1"), wall }, CODE)[0]!.allowed, "a bench stands before it");
  });
});
