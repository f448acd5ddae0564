import assert from "node:assert/strict";
import { solve } from "../../../src/solver/index.js";
import { planOf } from "../../language/telling.js";
import { randomFrom, type Random } from "../../support/random.js";
import { bestOfEvery, compare, costOfLaid } from "./every-layout.js";

/** What a random small room has: modules of about an inch, so that all layouts can be tried. */
interface Kind {
  readonly walls: number;
  readonly wishes: readonly string[];
  /** What stands in the first wall. */
  readonly first?: (random: Random) => string;
  /** What the first wall's lay states. */
  readonly stated?: string;
  /** What the last wall's lay states. */
  readonly lastStated?: string;
  /** How many steps of 1/64 in the joint may be wider. */
  readonly range?: number;
  readonly top?: string;
  /** How walls meet; by default in inside corners. */
  readonly corner?: "outside";
  readonly stop?: (up: number) => string;
}

const sixtyFourths = (steps: number): string => `${steps}/64`;

/** Walls side by side, each with its left corner under the one before. */
function roomText(random: Random, kind: Kind): string {
  const { walls, wishes, first, stated = "", lastStated = "", range = 0, top = "ceiling" } = kind;
  const face = [random.integer(50, 76), random.integer(40, 56)].map(sixtyFourths);
  const meets = kind.corner ?? "corner";
  const up = random.integer(120, 170);
  const bond = random.chance(0.5) ? "stack" : "running 1/2";
  const joint = range > 0 ? `4/64 to ${sixtyFourths(4 + range)}` : "4/64";
  const wallsText = Array.from({ length: walls }, (_, i) => {
    const corners = [
      i > 0
        ? `left ${meets} w${i - 1} over${meets === "corner" ? " movement 1/8" : ""}`
        : "left wall movement 1/8",
      i < walls - 1
        ? `right ${meets} w${i + 1} under${meets === "corner" ? " movement 1/8" : ""}`
        : "right wall movement 1/8",
    ];
    const height = i === 0 && kind.stop ? kind.stop(up) : sixtyFourths(up);
    return `wall w${i} {
  size ${sixtyFourths(random.integer(150, 240))} x ${height}
  bottom pan movement ${sixtyFourths(random.integer(4, 12))}
  ${corners.join("\n  ")}
  top ${i === 0 ? top : "ceiling movement 1/8"}
  ${i === 0 && first ? first(random) : ""}
  lay field {
    bond ${bond}
    joint ${joint}
    ${i === 0 ? stated : i === walls - 1 ? lastStated : ""}
  }
}`;
  });
  return `bed 1/8
prefer {
  ${wishes.join("\n  ")}
}
tile field { 
  face ${face.join(" x ")}
  thickness 5/16
}
${wallsText.join("\n")}
`;
}

/**
 * The solver's room is no worse than any layout in steps of 1/64 in, and it says that it looked at all, unless
 * it `mayStop` before that and say so.
 */
function isNeverWorse(kind: Kind, seeds: readonly number[], mayStop = false): void {
  for (const seed of seeds) {
    const text = roomText(randomFrom(seed), kind);
    const plan = planOf(text);
    assert.equal(plan.walls.length, kind.walls, text);
    const solved = solve(plan);
    const cost = costOfLaid(solved);
    const best = bestOfEvery(plan);
    const told = JSON.stringify({ seed, cost, best, capped: solved.room!.capped });
    assert.ok(compare(cost, best) <= 0, `${told}\n${text}`);
    if (!mayStop) assert.equal(solved.room!.capped, false, told);
  }
}

const window = (random: Random): string => `window sash {
    at ${sixtyFourths(random.integer(30, 70))}, ${sixtyFourths(random.integer(25, 50))}
    size 70/64 x 50/64
    movement 1/16
  }`;

describe("a room's layout against every layout in steps of 1/64 in", () => {
  it("is never worse where courses are to meet before all else", () => {
    isNeverWorse({ walls: 2, wishes: ["courses meet"] }, [1, 2, 3]);
  });

  it("is never worse where they are to meet after other wishes", () => {
    const wishes = ["no cut under 1/2", "whole courses at top", "courses meet", "equal ends"];
    isNeverWorse({ walls: 2, wishes }, [1, 2, 3]);
  });

  it("is never worse where stated heights keep courses apart", () => {
    isNeverWorse(
      {
        walls: 3,
        wishes: ["courses meet", "few cuts"],
        stated: "up joint at 70/64",
        lastStated: "up joint at 85/64",
      },
      [1, 2],
    );
  });

  it("is never worse round a window with wishes of its own", () => {
    const wishes = ["whole courses at sill of sash", "centre on sash", "courses meet", "few cuts"];
    isNeverWorse({ walls: 2, first: window, wishes }, [1, 2, 3]);
  });

  it("is never worse over a range of joints", () => {
    const wishes = ["courses meet", "whole courses at bottom", "whole courses at top"];
    isNeverWorse({ walls: 2, wishes, range: 2 }, [1, 2, 3]);
  });

  it("is never worse at outside corners", () => {
    const wishes = ["courses meet", "equal ends"];
    isNeverWorse({ walls: 2, wishes, corner: "outside" }, [1, 2]);
  });

  it("is never worse with two niches that may both move and meet one tile", () => {
    const first = (random: Random): string => `niche one {
    at ${sixtyFourths(random.integer(20, 24))} to 36/64, 40/64
    size 40/64 x 40/64
    movement 1/16
  }
  niche two {
    at 84/64 to ${sixtyFourths(random.integer(92, 98))}, 45/64
    size 40/64 x 40/64
    movement 1/16
  }`;
    const stated = "up joint at 70/64\n    across tile centred at 83/64";
    isNeverWorse({ walls: 1, first, stated, wishes: ["no cut under 1/4"] }, [1, 2, 3]);
  });

  it("is never worse with a niche that may move over a range of joints, the height being stated", () => {
    const first = (): string => `niche shelf {
    at 40/64 to 48/64, 40/64
    size 50/64 x 40/64
    movement 1/16
  }`;
    const stated = "up joint at 70/64";
    isNeverWorse({ walls: 1, first, stated, range: 2, wishes: ["no cut under 1/4"] }, [1, 2]);
  });

  it("is never worse with a niche whose place is free across", () => {
    const first = (): string => `niche shelf {
    at 40/64 to 60/64, 40/64
    size 50/64 x 40/64
    movement 1/16
  }`;
    isNeverWorse({ walls: 1, first, wishes: ["no cut under 1/4"] }, [1, 2]);
  });

  it("is never worse with a niche whose height is free", () => {
    const first = (): string => `niche shelf {
    at 40/64, 30/64 to 50/64
    size 50/64 x 40/64
    movement 1/16
  }`;
    const wishes = ["whole courses at sill of shelf", "few cuts"];
    isNeverWorse({ walls: 1, first, wishes }, [1, 2]);
  });

  it("is never worse with a niche that may move alone, the lay being stated", () => {
    const first = (random: Random): string => `niche shelf {
    at 30/64 to 62/64, ${sixtyFourths(random.integer(20, 30))} to 62/64
    size 50/64 x 40/64
    movement 1/16
  }`;
    const stated = "up joint at 70/64\n    across tile centred at 83/64";
    isNeverWorse({ walls: 1, first, stated, wishes: ["no cut under 1/4"] }, [1, 2, 3, 4]);
  });

  it("is never worse with a height alone to stop at, the lay being stated", () => {
    const stop = (up: number): string => `${sixtyFourths(up - 50)} to ${sixtyFourths(up)}`;
    const stated = "up joint at 70/64";
    isNeverWorse({ walls: 1, stop, top: "free", stated, wishes: ["no cut under 1/2"] }, [1, 2, 3]);
  });

  it("is never worse with a height to stop at, where the search may stop before it has looked at all", () => {
    const stop = (up: number): string => `${sixtyFourths(up - 20)} to ${sixtyFourths(up)}`;
    const wishes = ["courses meet", "whole courses at top"];
    isNeverWorse({ walls: 2, stop, top: "free", wishes }, [1, 2], true);
  });
});
