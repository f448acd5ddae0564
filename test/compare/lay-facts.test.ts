import assert from "node:assert/strict";
import { layFacts } from "../../src/compare/lay-facts.js";
import { edited, told, WALL } from "./wall.js";

function facts(...edits: readonly (readonly [string, string])[]): string[] {
  const [before, after] = [WALL, edited(WALL, ...edits)].map(
    (text) => told(text).solved.walls[0]!.lays[0]!,
  );
  return layFacts(
    { lays: { before: before!, after: after! }, lowest: true },
    "inch",
    new Map(),
  ).map(({ name }) => name);
}

describe("layFacts", () => {
  it("tells starts that lead to another grid", () => {
    assert.deepEqual(facts(["full tile from left", "tile centred on wall"]), ["across"]);
    assert.deepEqual(facts(["full course from bottom", "joint at 5"]), ["up"]);
  });

  it("tells places as people are told them, to the nanometre where they would be alike", () => {
    const starts = (...places: readonly string[]) => {
      const [before, after] = places.map(
        (place) =>
          told(edited(WALL, ["full tile from left", `tile centred at ${place}`])).solved.walls[0]!
            .lays[0]!,
      );
      const [fact] = layFacts(
        { lays: { before: before!, after: after! }, lowest: true },
        "inch",
        new Map(),
      );
      return [fact!.before, fact!.after].map((value) => value?.kind === "words" && value.words);
    };
    assert.deepEqual(starts("63.366667mm", "65mm"), [
      "across tile centred at 2 1/2- in",
      "across tile centred at 2 9/16- in",
    ]);
    assert.deepEqual(starts("63.366667mm", "63.366668mm"), [
      "across tile centred at 63.366667mm",
      "across tile centred at 63.366668mm",
    ]);
  });

  it("says nothing of a start that is written otherwise and leads to the same", () => {
    assert.deepEqual(facts(["full tile from left", "tile centred at 2 1/8"]), []);
    assert.deepEqual(facts(["full course from bottom", "joint at 4 3/16"]), []);
  });

  it("tells bond and joint", () => {
    assert.deepEqual(facts(["bond stack", "bond running 1/2"]), ["bond"]);
    assert.deepEqual(facts(["joint 1/8\n", "joint 1/4\n"]), ["joint"]);
  });
});
