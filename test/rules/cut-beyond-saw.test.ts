import assert from "node:assert/strict";
import { findings, messages, type WallText } from "./wall-text.js";

const CODE = "cut/beyond-saw";

/** Tile of 24 x 12 in on a wall that is cut to so much, for a saw that cuts so far. */
const sawn = (size: string, rip: string, more: WallText = {}): WallText => ({
  face: "24 x 12",
  size,
  plan: `saw {\n rip ${rip}\n}`,
  ...more,
});
const RIPPED = "24 x 18";
const CROSSCUT = "36 x 12";

describe("cut/beyond-saw", () => {
  it("tells a rip one nanometre longer than the saw cuts, and is silent at it", () => {
    assert.deepEqual(messages(sawn(RIPPED, "24"), CODE), []);
    assert.deepEqual(messages(sawn(RIPPED, "24 - nm"), CODE), [
      "1 piece wants a cut 24 in long; at most 24- in, what the saw can make, is wanted",
    ]);
  });

  it("tells a crosscut by the height of the piece: a rip goes first", () => {
    assert.deepEqual(messages(sawn(CROSSCUT, "12"), CODE), []);
    assert.equal(messages(sawn(CROSSCUT, "12 - nm"), CODE).length, 1);
    // Ripped to 6 in and then crosscut: the rip is 4 in long, the crosscut 6 and not 12.
    const upright = { face: "4 x 12" };
    assert.deepEqual(messages(sawn("2 x 6", "6", upright), CODE), []);
    assert.equal(messages(sawn("2 x 6", "6 - nm", upright), CODE).length, 1);
  });

  it("tells a cut to a slope by its length", () => {
    // 3 in high over 4 in across: 5 in long, in a tile of 4 in.
    const slope = (rip: string): WallText =>
      sawn("4 x 20", rip, {
        face: "4 x 4",
        edges: "left free\nright free\ntop free\nbottom free measured 0: 0, 4: 3",
      });
    assert.deepEqual(messages(slope("5"), CODE), []);
    assert.match(messages(slope("5 - nm"), CODE)[0]!, /cut 5 in long/);
  });

  it("is silent where the plan names no saw, or not how far it cuts", () => {
    assert.deepEqual(messages({ face: "24 x 12", size: RIPPED }, CODE), []);
    const plan = "saw {\n kerf 3/32\n}";
    assert.deepEqual(messages({ face: "24 x 12", size: RIPPED, plan }, CODE), []);
  });

  it("speaks at the lay, as a warning, and is silenced by an allow there", () => {
    const [found] = findings(sawn(RIPPED, "20"), CODE);
    assert.equal(found!.severity, "warning");
    assert.deepEqual(found!.pieces, ["back/2/1"]);
    const lay = 'allow cut/beyond-saw "ripped at the yard"';
    assert.equal(findings(sawn(RIPPED, "20", { lay }), CODE)[0]!.allowed, "ripped at the yard");
  });
});
