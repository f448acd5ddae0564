import assert from "node:assert/strict";
import { check, RULES } from "../../src/rules/index.js";
import { solveClean } from "../support/solve-text.js";
import { findings, wallText } from "./wall-text.js";

const sliver = { size: "13 x 3" };
const checked = (text: string) => check(solveClean(text).solved);

describe("checking a solved plan", () => {
  it("orders findings by their place in the text, then by code", () => {
    const wall = "window sash {\n at 7, 4\n size 2 x 2\n}";
    const found = checked(wallText({ size: "13 x 9", wall, joint: "1/32", edges: "left pan" }));
    const places = found.map(({ range, code }) => [range.start.line, range.start.character, code]);
    const sorted = [...places].sort(
      (a, b) =>
        Number(a[0]) - Number(b[0]) ||
        Number(a[1]) - Number(b[1]) ||
        (String(a[2]) < String(b[2]) ? -1 : String(a[2]) > String(b[2]) ? 1 : 0),
    );
    assert.ok(found.length > 3);
    assert.deepEqual(places, sorted);
  });

  it("says the same twice", () => {
    const text = wallText({ size: "13 x 9", joint: "1/32" });
    assert.deepEqual(checked(text), checked(text));
  });

  it("gives every finding a file, a wall, a code of the table and a source", () => {
    for (const found of checked(wallText({ size: "13 x 9", joint: "1/32", edges: "left pan" }))) {
      assert.equal(found.file, "test.tileplan");
      assert.equal(found.wall, "back");
      assert.ok(RULES.some(({ code }) => code === found.code));
      assert.ok(found.source);
    }
  });

  it("takes the reason of the innermost allow", () => {
    const allow = (reason: string) => `allow cut/sliver "${reason}"`;
    const text = { ...sliver, lay: allow("lay"), wall: allow("wall"), plan: allow("plan") };
    assert.equal(findings(text, "cut/sliver")[0]!.allowed, "lay");
  });

  it("does not let an allow in one wall silence another", () => {
    const other = wallText(sliver)
      .slice(wallText(sliver).indexOf("wall back"))
      .replace("wall back", "wall other")
      .replace("lay field {", 'lay field {\nallow cut/sliver "behind the door"');
    const found = checked(wallText(sliver) + other).filter(({ code }) => code === "cut/sliver");
    assert.deepEqual(
      found.map(({ wall, severity }) => [wall, severity]),
      [
        ["back", "error"],
        ["other", "information"],
      ],
    );
  });

  it("is silent about a plan without walls, and about a wall without a lay", () => {
    assert.deepEqual(checked('plan "Empty"\n'), []);
    assert.deepEqual(
      checked('plan "Bare"\nwall back "Back" {\n size 60 x 96\n bottom pan\n}\n'),
      [],
    );
  });
});
