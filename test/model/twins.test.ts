import assert from "node:assert/strict";
import { twinsOf } from "../../src/model/twins.js";

const at = (line: number) => ({ file: "a", line });

describe("twinsOf", () => {
  it("pairs the parts of what says the same, wherever it is written", () => {
    const a = { name: "back", edges: [{ side: "left", origin: at(1) }], origin: at(0) };
    const b = { name: "back", edges: [{ side: "left", origin: at(7) }], origin: at(6) };
    const twins = twinsOf(a, b)!;
    assert.equal(twins.get(a), b);
    assert.equal(twins.get(a.edges[0]!), b.edges[0]);
    assert.equal(twins.get(a.origin), undefined);
  });

  it("has none of what says anything else", () => {
    const wall = { size: 3, edges: [{ off: 1 }, { off: 2 }], stop: null };
    assert.equal(twinsOf(wall, { ...wall, size: 4 }), null);
    assert.equal(twinsOf(wall, { ...wall, edges: [{ off: 1 }] }), null);
    assert.equal(twinsOf(wall, { ...wall, edges: [{ off: 2 }, { off: 1 }] }), null);
    assert.equal(twinsOf(wall, { ...wall, stop: { min: 1 } }), null);
    assert.equal(twinsOf(wall, { ...wall, more: 1 }), null);
    assert.equal(twinsOf({ ...wall, more: 1 }, wall), null);
    assert.equal(twinsOf({ a: undefined }, { b: undefined }), null);
  });

  it("takes one part that is named twice for two that say the same", () => {
    const tile = { name: "field" };
    const [a, b] = [
      [tile, tile],
      [{ name: "field" }, { name: "field" }],
    ];
    assert.ok(twinsOf(a, b));
    assert.ok(twinsOf(b, a));
  });
});
