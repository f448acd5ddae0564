import assert from "node:assert/strict";
import { solve } from "../../src/solver/index.js";
import { planOf } from "../language/telling.js";
import { randomFrom, type Random } from "../support/random.js";
import { validate } from "../support/validate.js";
import { bestOfEveryLay } from "./every-lay.js";
import { compare, costOfLaid } from "./room/every-layout.js";

/** What the lays of a wall of a random small room say. */
interface Kind {
  readonly wishes: readonly string[];
  /** The lays of the walls from left to right. */
  readonly walls: readonly ((random: Random) => readonly string[])[];
  /** What stands in the first wall. */
  readonly first?: (random: Random) => string;
  readonly faces?: readonly [dado: string, field: string];
}

const sixtyFourths = (steps: number): string => `${steps}/64`;

function lay(tile: string, lines: readonly string[], joint = "4/64", bond = "stack"): string {
  const own = [`bond ${bond}`, `joint ${joint}`, ...lines];
  return [`  lay ${tile} {`, ...own.map((line) => `    ${line}`), "  }"].join("\n");
}

/** A dado up to a height, the field over it has the rest; both heights are open. */
const stacked = (random: Random): string[] => [
  lay("dado", [`covers bottom to ${sixtyFourths(random.integer(60, 90))}`]),
  lay("field", []),
];

/** The field alone. */
const plain = (): string[] => [lay("field", [])];

function roomText(random: Random, { wishes, walls, first, faces }: Kind): string {
  const face = (): string =>
    `${sixtyFourths(random.integer(46, 64))} x ${sixtyFourths(random.integer(34, 46))}`;
  const [dado, field] = faces ?? [face(), face()];
  const tile = (name: string, own: string): string =>
    `tile ${name} {\n  face ${own}\n  thickness 5/16\n}`;
  const wallsText = walls.map((lays, i) => {
    const left = i > 0 ? `corner w${i - 1} over` : "wall";
    const right = i < walls.length - 1 ? `corner w${i + 1} under` : "wall";
    return `wall w${i} {
  size ${sixtyFourths(random.integer(140, 190))} x ${sixtyFourths(random.integer(170, 210))}
  bottom pan movement 1/16
  top ceiling movement 1/16
  left ${left} movement 1/8
  right ${right} movement 1/8
  ${i === 0 && first ? first(random) : ""}
${lays(random).join("\n")}
}`;
  });
  return `bed 1/8
prefer {
  ${wishes.join("\n  ")}
}
${tile("dado", dado)}
${tile("field", field)}
${wallsText.join("\n")}
`;
}

/** The solver's lays are together no worse than any layout in steps of 1/64 in, and it says that it looked at all. */
function isNeverWorse(kind: Kind, seeds: readonly number[], mayStop = false): void {
  for (const seed of seeds) {
    const text = roomText(randomFrom(seed), kind);
    const plan = planOf(text);
    const solved = solve(plan);
    validate(solved);
    const cost = costOfLaid(solved);
    const best = bestOfEveryLay(plan);
    const told = JSON.stringify({ seed, cost, best, capped: solved.room!.capped });
    assert.ok(compare(cost, best) <= 0, `${told}\n${text}`);
    if (!mayStop) assert.equal(solved.room!.capped, false, `${told}\n${text}`);
  }
}

describe("the lays of a wall with wishes, against every layout in steps of 1/64 in", () => {
  it("are never worse for cuts and ends", () => {
    const wishes = ["no cut under 1/4", "equal ends", "few cuts"];
    isNeverWorse({ walls: [stacked], wishes }, [1, 2, 3]);
  });

  it("are never worse for whole courses at the bottom and the top", () => {
    const wishes = ["whole courses at top", "whole courses at bottom", "few cuts"];
    isNeverWorse({ walls: [stacked], wishes }, [4, 5, 6]);
  });

  it("are never worse round a window with wishes of its own", () => {
    const first = (random: Random): string => `window sash {
    at ${sixtyFourths(random.integer(30, 50))}, ${sixtyFourths(random.integer(100, 110))}
    size 60/64 x 40/64
    movement 1/16
  }`;
    const wishes = ["whole courses at sill of sash", "centre on sash", "few cuts"];
    isNeverWorse({ walls: [stacked], first, wishes }, [7, 8, 9]);
  });

  it("are never worse side by side and round a panel", () => {
    const beside = (random: Random): string[] => [
      lay("dado", [`covers left to ${sixtyFourths(random.integer(60, 80))}`]),
      lay("field", []),
    ];
    const panel = (random: Random): string[] => [
      lay("dado", [
        `at ${sixtyFourths(random.integer(20, 40))}, ${sixtyFourths(random.integer(30, 50))}`,
        "size 90/64 x 70/64",
      ]),
      lay("field", []),
    ];
    const wishes = ["few cuts", "equal ends"];
    isNeverWorse({ walls: [beside], wishes }, [10, 11]);
    isNeverWorse({ walls: [panel], wishes }, [12, 13]);
  });
});

describe("lays that meet round corners, against every layout in steps of 1/64 in", () => {
  it("are never worse where courses are to meet, all heights being open", () => {
    isNeverWorse({ walls: [stacked, stacked], wishes: ["courses meet", "few cuts"] }, [1, 2, 3]);
  });

  it("are never worse where other wishes come before", () => {
    const wishes = ["whole courses at top", "courses meet", "equal ends"];
    isNeverWorse({ walls: [stacked, stacked], wishes }, [4, 5]);
  });

  it("are never worse where a wall of one lay meets one of several", () => {
    const wishes = ["courses meet", "no cut under 1/4"];
    isNeverWorse({ walls: [plain, stacked], wishes }, [6, 7, 8]);
    isNeverWorse({ walls: [stacked, plain], wishes }, [9, 10]);
  });

  it("are never worse where stated courses stand between open ones", () => {
    const stated = (random: Random): string[] => [
      lay("dado", ["courses 2", "across full tile from left"]),
      lay("field", ["over dado", `across full tile from ${random.pick(["left", "right"])}`]),
    ];
    const wishes = ["courses meet", "few cuts"];
    isNeverWorse({ walls: [stacked, stated, plain], wishes }, [11, 12]);
  });

  it("are never worse where the bond is to go on", () => {
    const on = (random: Random): string[] => [
      lay("dado", [`covers bottom to ${sixtyFourths(80)}`, "up full course from top"]),
      lay(
        "field",
        [`up joint at ${sixtyFourths(140)}`],
        "4/64",
        random.pick(["stack", "running 1/2"]),
      ),
    ];
    const wishes = ["bond goes on", "no cut under 1/4", "few cuts"];
    isNeverWorse({ walls: [on, on], wishes }, [13, 14, 15, 16]);
  });
});

describe("lays that share a range of joints, against every layout in steps of 1/64 in", () => {
  it("are never worse for a list of courses that is to end with a whole one", () => {
    const list = (): string[] => [
      lay("dado", ["courses 2 of dado, rest of field"], "4/64 to 14/64"),
    ];
    const wishes = ["whole courses at top", "few cuts"];
    isNeverWorse({ walls: [list], wishes }, [1, 2, 3]);
  });

  it("are never worse for a block on each of two walls", () => {
    const list = (): string[] => [
      lay("dado", ["courses 2 of dado, rest of field"], "4/64 to 6/64"),
    ];
    const wishes = ["courses meet", "whole courses at top"];
    isNeverWorse({ walls: [list, list], wishes }, [4, 5]);
  });

  it("are never worse for a lay that begins past one of another joint", () => {
    const past = (): string[] => [
      lay("dado", ["courses 2"], "4/64"),
      lay("field", ["over dado"], "4/64 to 7/64"),
    ];
    isNeverWorse({ walls: [past], wishes: ["whole courses at top", "equal ends"] }, [6, 7]);
  });
});
