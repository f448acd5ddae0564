import highsLoader from "highs";
import { programOf, room } from "../solver/room/courses-program.js";
import type { Subject } from "./bundle.js";
import { time, timeInTurn, type Timing } from "./statistics.js";
import type { Bar } from "./table.js";

const NOWHERE = { file: "bench.tileplan", root: "", read: () => null };

/** Four walls with a window, two niches whose places are free, and a range of joints. */
function fourWalls(): string {
  const wall = (name: string, across: number, corners: string, openings: string) =>
    `wall ${name} {
  size ${across} x 96
  bottom pan movement 1/8
  top ceiling movement 1/8
  ${corners}
  ${openings}
  lay field {
    bond running 1/2
    joint 1/16 to 1/8
  }
}
`;
  const corner = (side: string, name: string, lap: string) =>
    `${side} corner ${name} ${lap} movement 1/8\n`;
  const opening = (kind: string, at: string, size: string) =>
    `${kind} {\n at ${at}\n size ${size}\n movement 1/16\n }`;
  return [
    `units inch\nbed 1/8\nprefer {\n  courses meet\n  centre on sash\n  whole courses at sill of sash\n  no cut under 2\n  equal ends\n}\n`,
    `tile field {\n  face 5 7/8 x 2 7/8\n  thickness 5/16\n  variation 1/64\n}\n`,
    wall(
      "north",
      60,
      corner("left", "west", "under") + corner("right", "east", "under"),
      opening("window sash", "18, 46 1/4", "24 x 36"),
    ),
    wall(
      "east",
      34,
      corner("left", "north", "over") + corner("right", "south", "under"),
      opening("niche soap", "8 to 14, 40 to 48", "12 x 14"),
    ),
    wall("south", 60, corner("left", "east", "over") + corner("right", "west", "over"), ""),
    wall(
      "west",
      34,
      corner("left", "south", "under") + corner("right", "north", "over"),
      opening("niche shelf", "6 to 12, 44 to 50", "14 x 10"),
    ),
  ].join("");
}

/** So many walls in a row, each with a niche that may move: more than are searched whole. */
function manyWalls(many: number): string {
  const walls = Array.from({ length: many }, (_, i) => {
    const left = i > 0 ? `left corner w${i - 1} over movement 1/8` : "left wall movement 1/8";
    const right =
      i < many - 1 ? `right corner w${i + 1} under movement 1/8` : "right wall movement 1/8";
    return `wall w${i} {
  size ${50 + ((7 * i) % 23)} x ${90 + (i % 3)}
  bottom pan movement 1/8
  top ceiling movement 1/8
  ${left}
  ${right}
  niche n {
    at ${18 + (i % 4)} to ${24 + (i % 4)}, 40 to 48
    size 12 x 14
    movement 1/16
  }
  lay field {
    bond running 1/2
    joint 1/16
  }
}
`;
  });
  const tile = "tile field {\n  face 5 7/8 x 2 7/8\n  thickness 5/16\n}\n";
  return `units inch\nbed 1/8\nprefer {\n  courses meet\n}\n${tile}${walls.join("")}`;
}

/** Laying a room together, and the courses of three walls against a mixed-integer solver. */
export async function benchRoom(
  subject: Subject,
): Promise<{ timings: Timing[]; bars: Bar[]; note: string }> {
  const planOf = (text: string) => subject.resolve(subject.parse(text), NOWHERE).plan;
  const asked = planOf(fourWalls());
  const laid = time("four walls laid together", { warmup: 5, rounds: 21 }, () =>
    subject.solve(asked),
  );
  const [fifteen, sixty] = [planOf(manyWalls(15)), planOf(manyWalls(60))];
  const many = Object.values(
    timeInTurn(
      { warmup: 1, rounds: 5 },
      {
        "fifteen walls with a niche each, together": () => subject.solve(fifteen),
        "  sixty of them": () => subject.solve(sixty),
      },
    ),
  );
  const { text, rows } = room(1);
  const three = planOf(text);
  const highs = await highsLoader();
  const [program, bottom] = [programOf(rows, "top", []), programOf(rows, "bottom", [])];
  const [own, integer] = Object.values(
    timeInTurn(
      { warmup: 1, rounds: 5 },
      {
        "three walls over a range of joints": () => subject.solve(three),
        "  mixed-integer model (whole courses at both ends)": () => [
          highs.solve(program),
          highs.solve(bottom),
        ],
      },
    ),
  );
  const { capped } = subject.solve(asked).room!;
  return {
    timings: [laid, ...many, own!, integer!],
    bars: [
      {
        name: "four walls laid together",
        found: laid.median,
        limit: 300,
        sense: "under",
        unit: "ms",
      },
    ],
    note:
      `The room of four walls is ${capped ? "capped" : "searched whole"}. Three walls are laid ` +
      `${(integer!.median / own!.median).toFixed(1)} times as fast as the mixed-integer model answers,\n` +
      `which weighs less: no cuts, no tiles, nothing across.`,
  };
}
