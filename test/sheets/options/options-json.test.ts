import assert from "node:assert/strict";
import { optionsJson } from "../../../src/sheets/options/options-json.js";
import { toMillimetres } from "../../../src/measure/index.js";
import { panelText } from "../../solver/free-wall-text.js";
import { solveText } from "../../support/solve-text.js";
import { bench, OPEN, RUNNING, STATED } from "./bench.js";

interface Told {
  schema: number;
  plan: string;
  units: string;
  walls: {
    name: string;
    left?: string[];
    lays?: { name: string; left: string[]; options: object[] }[];
    options: {
      joint: number;
      had: boolean;
      behind: string | null;
      score: { slivers: number; tiles: number };
      smallestCut: { piece: string; size: number[] } | null;
      ends: { left: number[]; right: number[]; bottom: number; top: number };
      tilesNeeded: number;
    }[];
    wholeTiles: object | null;
  }[];
}

const told = (text: string): Told =>
  JSON.parse([...optionsJson(solveText(text).solved)].join("")) as Told;

describe("optionsJson", () => {
  it("has every wall's options, best first, in mm", () => {
    const { options } = bench(RUNNING);
    const { schema, plan, units, walls } = told(RUNNING);
    assert.deepEqual([schema, plan, units], [1, "Options bench", "inch"]);
    const [wall] = walls;
    assert.deepEqual(wall!.left, []);
    assert.equal(wall!.options.length, options.length);
    for (const [i, option] of options.entries()) {
      const json = wall!.options[i]!;
      assert.equal(json.joint, 3.175);
      assert.deepEqual([json.had, json.behind], [option.had, option.behind]);
      assert.deepEqual(json.ends.left, option.ends.left.map(toMillimetres));
      assert.equal(json.score.tiles, option.score.tiles);
      assert.ok(json.tilesNeeded > 0);
    }
  });

  it("has the options of each lay of a wall with several, the lowest one's as the wall's own", () => {
    const [wall] = told(panelText({ dado: "across tile centred at 5" })).walls;
    assert.deepEqual(
      wall!.lays!.map(({ name, left }) => [name, left]),
      [
        ["dado", []],
        ["field", ["across"]],
      ],
    );
    assert.deepEqual(wall!.lays![0]!.options, wall!.options);
    assert.notDeepEqual(wall!.lays![1]!.options, wall!.options);
    assert.equal(told(STATED).walls[0]!.lays, undefined);
  });

  it("says what was left open", () => {
    assert.deepEqual(told(OPEN).walls[0]!.left, ["across", "up"]);
  });

  it("has no options of a wall that isn't laid", () => {
    const [wall] = told('units inch\nwall bare "" {\n size 10 x 10\n}\n').walls;
    assert.deepEqual([wall!.options, wall!.wholeTiles], [[], null]);
    assert.equal(told(STATED).walls.length, 1);
  });
});
