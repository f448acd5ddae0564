import assert from "node:assert/strict";
import { findings, messages, type WallText } from "./wall-text.js";

const CODE = "hole/plate-rim";
const told = (hole: string, more: WallText = {}): string[] =>
  messages({ wall: `hole v at ${hole}`, ...more }, CODE);

/** Tile of 6 x 3 in with joints of 1/8 in from the corner: head joints from 6 to 6 1/8 in, bed joints from 3 to 3 1/8 in. */
describe("hole/plate-rim", () => {
  it("tells a rim that runs in a joint, its edges with it", () => {
    assert.deepEqual(told("8 1/16, 6 across 1 1/2 plate 4"), [
      "the rim of the plate of v runs in a joint at its left, and part of 1/8 in of joint shows beside it; " +
        "a rim on tile is wanted",
    ]);
    assert.equal(told("8, 6 across 1 1/2 plate 4").length, 1);
    assert.deepEqual(told("8 - nm, 6 across 1 1/2 plate 4"), []);
    assert.match(told("9, 5 across 1 1/2 plate 4")[0]!, /at its bottom,/);
    assert.deepEqual(told("9, 4 5/8 across 1 1/2 plate 4"), []);
  });

  it("looks at every course beside a plate with four sides, and at the middle of a round one", () => {
    const bond = { bond: "running 1/2" };
    // Course 2 stands 3 1/16 in to the right: its head joints are from 2 15/16 to 3 1/16 in, and a module on.
    assert.deepEqual(told("11 1/8, 1 1/2 across 1 1/2 plate 4", bond), []);
    assert.match(told("11 1/8, 4 1/2 across 1 1/2 plate 4", bond)[0]!, /at its left/);
    assert.match(told("11 1/8, 3 across 1 1/2 plate 4 x 5", bond)[0]!, /at its left/);
  });

  it("tells bowed tile under a plate, where its edges stand prouder than setting allows", () => {
    const bowed = (warpage: string): WallText => ({
      bond: "running 1/2",
      tile: `  warpage ${warpage}`,
    });
    const [found] = told("9, 6 across 1 1/2 plate 4 3/4", bowed("1/16"));
    assert.match(
      found!,
      /^the plate of v lies over 3 tiles whose edges stand up to 1\/16 in proud/,
    );
    assert.match(found!, /at most 1\/32 in, or flatter tile under the plate, is wanted$/);
    assert.deepEqual(told("9, 6 across 1 1/2 plate 4 3/4", bowed("1/32")), []);
    assert.deepEqual(told("3, 1 1/2 across 1 plate 2", bowed("1/16")), [], "it lies on one tile");
    assert.match(
      told("9, 6 across 1 1/2 plate 2", bowed("1/16"))[0] ?? "",
      /or a plate within one tile, is wanted$|^$/,
    );
  });

  it("is information at the hole, and silenced by an allow", () => {
    const wall = "hole v at 8 1/16, 6 across 1 1/2 plate 4";
    assert.equal(findings({ wall }, CODE)[0]!.severity, "information");
    const allowed = { wall: `${wall}\nallow ${CODE} "grouted flush"` };
    assert.equal(findings(allowed, CODE)[0]!.allowed, "grouted flush");
  });
});
