import assert from "node:assert/strict";
import { actOfKey, lookBy } from "../../src/preview/key-acts.js";

describe("keys on the picture", () => {
  it("move and zoom it", () => {
    assert.deepEqual(actOfKey("ArrowLeft", false, false), { act: "pan", dx: 60, dy: 0 });
    assert.deepEqual(actOfKey("ArrowDown", true, false), { act: "pan", dx: 0, dy: -240 });
    assert.deepEqual(actOfKey("+", true, false), { act: "zoom", factor: 1.25 });
    assert.deepEqual(actOfKey("-", false, true), { act: "zoom", factor: 0.8 });
    assert.deepEqual(actOfKey("0", false, false), { act: "fit" });
    assert.deepEqual(actOfKey("1", false, false), { act: "actual" });
    assert.deepEqual(actOfKey("W", true, false), { act: "width" });
  });

  it("walk from piece to piece once that was begun", () => {
    assert.deepEqual(actOfKey("p", false, false), { act: "walk" });
    assert.deepEqual(actOfKey("ArrowUp", false, true), { act: "step", step: "up" });
    assert.deepEqual(actOfKey("Home", false, true), { act: "step", step: "first" });
    assert.deepEqual(actOfKey("PageDown", false, true), { act: "wall", by: 1 });
    assert.deepEqual(actOfKey("Enter", false, true), { act: "select" });
    assert.deepEqual(actOfKey("Escape", false, true), { act: "stop" });
  });

  it("change how it is seen, and tell whether they did", () => {
    const done: string[] = [];
    const sight = {
      panBy: (dx: number, dy: number) => done.push(`pan ${dx} ${dy}`),
      zoom: (factor: number) => done.push(`zoom ${factor}`),
      fit: (hold: string) => done.push(`fit ${hold}`),
      actualSize: () => done.push("actual"),
    };
    const acts = ["ArrowUp", "+", "0", "w", "1"].map((key) => actOfKey(key, false, false)!);
    assert.ok(acts.every((act) => lookBy(act, sight)));
    assert.deepEqual(done, ["pan 0 60", "zoom 1.25", "fit whole", "fit width", "actual"]);
    assert.ok(!lookBy({ act: "walk" }, sight));
    assert.equal(done.length, acts.length);
  });

  it("are left to the editor otherwise", () => {
    for (const key of ["Enter", "Escape", "Home", "Tab", "a", "toString", "constructor"]) {
      assert.equal(actOfKey(key, false, false), null, key);
    }
  });
});
