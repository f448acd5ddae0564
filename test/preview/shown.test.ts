import assert from "node:assert/strict";
import { NOTHING, noteOf, withPicture } from "../../src/preview/shown.js";
import { twoWalls } from "./support/show-plan.js";

describe("what is shown of a plan", () => {
  const whole = twoWalls(2);
  const broken = { ...twoWalls(3), whole: false };

  it("is the newest picture", () => {
    const shown = withPicture(withPicture(NOTHING, whole), twoWalls(5));
    assert.equal(shown.drawn?.version, 5);
    assert.equal(noteOf(shown), null);
  });

  it("is not an older one", () => {
    const shown = withPicture(NOTHING, whole);
    assert.equal(withPicture(shown, twoWalls(1)), shown);
  });

  it("is one of the same version again: a file that it uses may have changed", () => {
    const again = twoWalls(2);
    assert.equal(withPicture(withPicture(NOTHING, whole), again).drawn, again);
  });

  it("stays the last whole picture under a note while the text is broken", () => {
    const shown = withPicture(withPicture(NOTHING, whole), broken);
    assert.equal(shown.drawn, whole);
    assert.equal(shown.latest, broken);
    assert.match(noteOf(shown)!, /could not be understood: this is the last picture before/);
    assert.equal(withPicture(shown, { ...broken, version: 4 }).drawn, whole);
    const mended = withPicture(shown, twoWalls(5));
    assert.equal(mended.drawn?.version, 5);
    assert.equal(noteOf(mended), null);
  });

  it("is what could be understood when there is no whole picture", () => {
    const shown = withPicture(NOTHING, broken);
    assert.equal(shown.drawn, broken);
    assert.match(noteOf(shown)!, /what could be is drawn/);
    const next = { ...broken, version: 4 };
    assert.equal(withPicture(shown, next).drawn, next);
  });

  it("says so when it is simplified, or gone", () => {
    const simple = withPicture(NOTHING, { ...whole, simplified: true });
    assert.match(noteOf(simple)!, /too large to draw piece by piece/);
    assert.equal(noteOf({ ...simple, gone: "The file was deleted." }), "The file was deleted.");
    assert.equal(withPicture({ ...simple, gone: "gone" }, whole).gone, null);
    assert.equal(noteOf(NOTHING), null);
  });
});
