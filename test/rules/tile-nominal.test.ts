import assert from "node:assert/strict";
import { findings, messages, wallText, type WallText } from "./wall-text.js";

const CODE = "tile/nominal";
const told = (parts: WallText): number => messages(parts, CODE).length;

// That the size on the box is the nominal one, with a joint in it: common practice.
describe("tile/nominal", () => {
  it("asks about a face in whole inches both ways, and is silent one nanometre off", () => {
    assert.deepEqual(messages({ face: "6 x 3" }, CODE), [
      "tile field has a face of 6 in x 3 in, which may be its nominal size; the real face, measured, and its " +
        "`variation` are wanted",
    ]);
    assert.equal(told({ face: "24 x 12", size: "60 x 60" }), 1);
    assert.equal(told({ face: "6 - nm x 3" }), 0);
    assert.equal(told({ face: "6 x 3 + nm" }), 0);
    assert.equal(told({ face: "5 7/8 x 2 7/8" }), 0);
  });

  it("asks about whole 50 mm both ways, in plans of any units", () => {
    const metric = (face: string): WallText => ({
      units: "mm",
      face,
      size: "2000 x 2000",
      joint: "2",
    });
    assert.equal(told(metric("600 x 300")), 1);
    assert.equal(told(metric("598 x 298")), 0);
    assert.equal(told(metric("600 x 298")), 0);
  });

  it("is silent about a tile whose variation is stated: it was measured", () => {
    assert.equal(told({ tile: "variation 1/64" }), 0);
  });

  it("is silent about mosaics", () => {
    assert.equal(told({ face: "2 x 2" }), 0);
    assert.equal(told({ face: "3 x 1" }), 1);
  });

  it("speaks once of a tile, however many walls have it", () => {
    const wall = wallText().slice(wallText().indexOf("wall back"));
    const text = wallText() + wall.replace("wall back", "wall other");
    assert.equal(findings(text, CODE).length, 1);
  });

  it("may be turned off, and is silenced by an allow in the tile", () => {
    assert.equal(told({ plan: "rules {\n nominal off\n}" }), 0);
    const tile = 'allow tile/nominal "measured"';
    assert.equal(findings({ tile }, CODE)[0]!.allowed, "measured");
  });
});
