import assert from "node:assert/strict";
import { run } from "../../src/engine.js";
import type { Opening, Plan, UpStart } from "../../src/model/index.js";
import { optionsJson, optionsText } from "../../src/sheets/index.js";
import { compareScores } from "../../src/solver/choose/index.js";
import { layWall } from "../../src/solver/lay-wall.js";
import {
  type OpeningFit,
  openingFits,
  optionsOf,
  type SettledStart,
  type SolvedWall,
} from "../../src/solver/index.js";
import { isOnJoints } from "../../src/solver/whole-tiles/joints-met.js";
import { printSketch } from "../support/print-sketch.js";
import { randomSketch } from "../support/random-sketch.js";

const SEEDS = Array.from({ length: 40 }, (_, i) => i + 1);

/** Each of these is chosen anew, and laid several times over. */
const FEW_SEEDS = SEEDS.slice(0, 12);

/** A random plan as it is, and with its starts left to the solver. */
function textsOf(seed: number): string[] {
  const text = printSketch(randomSketch(seed), seed % 2 ? "inch" : "mm");
  return [text, text.replace(/^ *(across|up) .*\n/gm, "")];
}

function solvedOf(text: string) {
  return run(text, { file: "a", root: "", read: () => null }).solved;
}

/** Whether an opening that was moved and sized so is on the joints of its wall, laid anew. */
function isOnThem(plan: Plan, solved: SolvedWall, opening: Opening, fit: OpeningFit): boolean {
  const changed: Opening = { ...opening, at: fit.at, size: fit.size };
  const wall = {
    ...solved.wall,
    openings: solved.wall.openings.map((each) => (each === opening ? changed : each)),
  };
  const { lay, joint, across, up } = solved.lays[0]!;
  const laid = layWall(plan, { ...wall, lays: [lay] }, () => ({
    joint,
    across: acrossOf(across, opening, changed),
    up: up.kind === "at-opening" && up.opening === opening ? atOpening(up, changed) : up,
    choice: null,
  }));
  const taken = laid.region.takeaways.find((each) => each.opening === changed);
  return isOnJoints(laid.lays[0]!, taken!.box);
}

function acrossOf(start: SettledStart, opening: Opening, changed: Opening): SettledStart {
  if (!("centre" in start) || start.centre.on !== "opening") return start;
  if (start.centre.opening !== opening) return start;
  return { kind: start.kind, centre: { on: "opening", opening: changed } };
}

function atOpening(start: Extract<UpStart, { kind: "at-opening" }>, opening: Opening): UpStart {
  return { ...start, opening };
}

describe("the options of random walls", () => {
  it("have the plan's own among them, and none before a better one", () => {
    for (const seed of FEW_SEEDS) {
      for (const text of textsOf(seed)) {
        const { plan, walls } = solvedOf(text);
        for (const wall of walls) {
          const ways = optionsOf(plan, wall)?.options ?? [];
          if (wall.lays.length > 0) assert.equal(ways.filter(({ had }) => had).length, 1);
          for (const [i, { score }] of ways.entries()) {
            if (i > 0) assert.ok(compareScores(ways[i - 1]!.score, score) <= 0, `seed ${seed}`);
          }
        }
      }
    }
  });

  it("are told within 100 columns, and as JSON", () => {
    for (const seed of FEW_SEEDS) {
      for (const text of textsOf(seed)) {
        const solved = solvedOf(text);
        for (const line of [...optionsText(solved)].join("").split("\n")) {
          assert.ok(line.length <= 100, `seed ${seed}: ${line}`);
        }
        assert.doesNotThrow(() => JSON.parse([...optionsJson(solved)].join("")) as unknown);
      }
    }
  });
});

describe("the openings of random walls", () => {
  it("are on the joints wherever they are told to be", () => {
    let fits = 0;
    for (const seed of SEEDS) {
      for (const text of textsOf(seed)) {
        const { plan, walls } = solvedOf(text);
        for (const wall of walls) {
          for (const opening of wall.lays.length > 0 ? wall.wall.openings : []) {
            const found = openingFits(wall, wall.lays[0]!, opening);
            for (const fit of [found?.moved, found?.sized]) {
              if (!fit) continue;
              fits++;
              assert.ok(isOnThem(plan, wall, opening, fit), `seed ${seed}: ${opening.name}`);
            }
          }
        }
      }
    }
    assert.ok(fits >= 25, `${fits} places`);
  });
});
