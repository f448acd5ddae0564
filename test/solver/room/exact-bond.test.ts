import assert from "node:assert/strict";
import { cornersOver } from "../../../src/rules/corner.js";
import { solve } from "../../../src/solver/index.js";
import { planOf } from "../../language/telling.js";
import { randomFrom } from "../../support/random.js";
import { bestOfEveryBond, bondOff } from "./every-bond.js";
import { compare, costOfLaid } from "./every-layout.js";

/** A small room whose bond is to go on: modules of about an inch, so that all starts can be tried. */
interface Kind {
  readonly walls: number;
  readonly wishes: readonly string[];
  readonly corner?: "outside";
  /** Each wall's bond, in turn. */
  readonly bonds?: readonly string[];
  /** What the second wall's lay states. */
  readonly stated?: string;
  /** Which wall covers the one beside it: the one at the right of the corner, or at the left. */
  readonly over?: "left";
  /** Whether the room is turned as in a mirror. */
  readonly mirrored?: boolean;
  /** Whether the walls are declared from the last to the first. */
  readonly reversed?: boolean;
}

const sixtyFourths = (steps: number): string => `${steps}/64`;

function roomText(seed: number, kind: Kind): string {
  const random = randomFrom(seed);
  const { walls, wishes, bonds = ["running 1/2"], stated = "" } = kind;
  const meets = kind.corner ?? "corner";
  // An even module has its half on the grid of sixty-fourths.
  const face = [2 * random.integer(20, 26), random.integer(40, 56)].map(sixtyFourths);
  const up = random.integer(70, 120);
  const [before, after] = kind.mirrored ? ["right", "left"] : ["left", "right"];
  const [first, second] = kind.over === "left" ? ["under", "over"] : ["over", "under"];
  const joint = meets === "corner" ? " movement 1/8" : "";
  const texts = Array.from({ length: walls }, (_, i) => {
    const one = i > 0 ? `${meets} w${i - 1} ${first}${joint}` : "wall movement 1/8";
    const other = i < walls - 1 ? `${meets} w${i + 1} ${second}${joint}` : "wall movement 1/8";
    return `wall w${i} {
  size ${sixtyFourths(random.integer(130, 220))} x ${sixtyFourths(up + 100)}
  bottom pan movement ${sixtyFourths(random.integer(4, 12))}
  ${before} ${one}
  ${after} ${other}
  top ceiling movement 1/8
  lay field {
    bond ${bonds[i % bonds.length]!}
    joint 4/64
    up joint at ${sixtyFourths(up)}
    ${i === 1 ? stated : ""}
  }
}`;
  });
  if (kind.reversed) texts.reverse();
  return `bed 1/8
prefer {
  ${wishes.join("\n  ")}
}
tile field {
  face ${face.join(" x ")}
  thickness 5/16
}
${texts.join("\n")}
`;
}

/** The solver's room is no worse than all starts in steps of 1/64 in, and it says that it looked at all. */
function isNeverWorse(kind: Kind, seeds: readonly number[]): void {
  for (const seed of seeds) {
    const text = roomText(seed, kind);
    const plan = planOf(text);
    const solved = solve(plan);
    const cost = costOfLaid(solved);
    const best = bestOfEveryBond(plan);
    const told = JSON.stringify({ seed, cost, best, capped: solved.room!.capped });
    assert.ok(compare(cost, best) <= 0, `${told}\n${text}`);
    assert.equal(solved.room!.capped, false, told);
    const laid = solved.walls.flatMap((wall) => cornersOver(wall, solved)).map(bondOff);
    const place = 1 + plan.wishes.findIndex(({ wanted }) => wanted.kind === "bond-goes-on");
    const off = laid.reduce((sum, each) => sum + each, 0);
    assert.equal(cost[place], off, `the miss is not the pieces': ${told}`);
  }
}

describe("a bond that is wanted to go on against every start in steps of 1/64 in", () => {
  it("is never worse where that is wanted before all else", () => {
    isNeverWorse({ walls: 2, wishes: ["bond goes on"] }, [1, 2, 3, 4]);
    isNeverWorse({ walls: 2, wishes: ["bond goes on"], over: "left" }, [1, 2]);
  });

  it("is never worse where it is wanted after other wishes", () => {
    isNeverWorse({ walls: 2, wishes: ["equal ends", "bond goes on", "few cuts"] }, [1, 2, 3]);
    isNeverWorse({ walls: 2, wishes: ["no cut under 1/2", "bond goes on"] }, [1, 2, 3]);
  });

  it("is never worse round two corners", () => {
    isNeverWorse({ walls: 3, wishes: ["bond goes on"] }, [1, 2]);
    isNeverWorse({ walls: 3, wishes: ["no cut under 1/4", "bond goes on", "few cuts"] }, [3]);
  });

  it("is never worse at outside corners", () => {
    isNeverWorse({ walls: 2, wishes: ["bond goes on"], corner: "outside" }, [1, 2]);
  });

  it("is never worse where one start is stated", () => {
    const stated = "across tile centred on wall";
    isNeverWorse({ walls: 3, wishes: ["bond goes on"], stated }, [1]);
    isNeverWorse({ walls: 2, wishes: ["equal ends", "bond goes on"], stated }, [1, 2]);
  });

  it("is never worse where the bonds of two walls differ", () => {
    isNeverWorse({ walls: 2, wishes: ["bond goes on"], bonds: ["stack", "running 1/2"] }, [1, 2]);
    isNeverWorse(
      { walls: 2, wishes: ["equal ends", "bond goes on"], bonds: ["running 1/2", "stack"] },
      [1, 2],
    );
  });

  it("costs the same in a mirror, and with the walls declared in another order", () => {
    for (const seed of [1, 2, 3]) {
      const kind = { walls: 3, wishes: ["bond goes on", "few cuts"], bonds: ["stack"] };
      const costOf = (more: Partial<Kind>): number[] =>
        costOfLaid(solve(planOf(roomText(seed, { ...kind, ...more }))));
      const own = costOf({});
      assert.deepEqual(costOf({ mirrored: true }), own);
      assert.deepEqual(costOf({ reversed: true }), own);
    }
  });
});
