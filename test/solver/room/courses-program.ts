import { randomFrom } from "../../support/random.js";

/**
 * An independent answer for the courses of several walls at one height, with a joint that may be
 * chosen: a mixed-integer program, solved by HiGHS (Huangfu and Hall, "Parallelizing the dual revised
 * simplex method", 2018), one wish after the other. Lengths are millimetres.
 */

interface RowWall {
  /** Where its tile begins and ends, up from the level line. */
  readonly bottom: number;
  readonly top: number;
}

export interface Rows {
  readonly face: number;
  readonly joint: readonly [number, number];
  readonly walls: readonly RowWall[];
}

/**
 * y is the bottom of course 0, j the joint. Each end of each wall is either within the joint over course k
 * (w = 1), which misses nothing, or misses by m the edge of course k (z = 1): the top of a whole one below
 * the wall's top, the bottom of one over the wall's bottom.
 */
export function programOf(
  { face, joint, walls }: Rows,
  end: "top" | "bottom",
  settled: readonly string[],
): string {
  const most = Math.max(...walls.map(({ top }) => top));
  const courses = Math.ceil(most / (face + joint[0])) + 3;
  // No constraint is off by more.
  const big = 2 * (most + 4 * face);
  const rows: string[] = [];
  const binaries: string[] = [];
  const ks = Array.from({ length: courses }, (_, i) => i - 2);
  for (const [w, wall] of walls.entries()) {
    for (const side of ["top", "bottom"] as const) {
      const [z, within] = ["z", "w"].map(
        (letter) => (k: number) => `${letter}_${side}_${w}_${k + 2}`,
      );
      const all = ks.flatMap((k) => [z!(k), within!(k)]);
      binaries.push(...all);
      rows.push(`${all.join("\n + ")} = 1`);
      const miss = `m_${side}_${w}`;
      for (const k of ks) {
        // The joint over course k runs from y + k j + (k + 1) f to y + (k + 1) j + (k + 1) f.
        const low = wall[side] - (k + 1) * face;
        rows.push(`y + ${k} j + ${big} ${within!(k)} <= ${low + big}`);
        rows.push(`y + ${k + 1} j - ${big} ${within!(k)} >= ${low - big}`);
        const edge = side === "top" ? k : k + 1;
        rows.push(`y + ${edge} j - ${miss} + ${big} ${z!(k)} <= ${low + big}`);
        rows.push(`y + ${edge} j + ${miss} - ${big} ${z!(k)} >= ${low - big}`);
      }
    }
  }
  return [
    "Minimize",
    ` obj: ${walls.map((_, w) => `m_${end}_${w}`).join(" + ")}`,
    "Subject To",
    ...[...rows, ...settled].map((row, i) => ` c${i}: ${row.replaceAll("+ -", "- ")}`),
    "Bounds",
    ` ${joint[0]} <= j <= ${joint[1]}`,
    ` 0 <= y <= ${face + joint[1]}`,
    "Binaries",
    ...binaries.map((name) => ` ${name}`),
    "End",
  ].join("\n");
}

const inches = (sixtyFourths: number): string => `${sixtyFourths}/64`;
const MM = 25.4 / 64;

/** Three walls with random heights, as a plan and as rows of a program. */
export function room(seed: number): { text: string; rows: Rows } {
  const random = randomFrom(seed);
  const face = random.integer(150, 400);
  const joint = [4, random.integer(6, 12)] as const;
  const walls = Array.from({ length: 3 }, () => ({
    up: random.integer(60 * 64, 96 * 64),
    low: random.integer(4, 200),
  }));
  const text = `prefer {
  courses meet
  whole courses at top
  whole courses at bottom
}
tile field {
  face 4 x ${inches(face)}
  thickness 1/4
}
${walls
  .map(
    ({ up, low }, i) => `wall w${i} {
  size 40 x ${inches(up)}
  bottom pan movement ${inches(low)}
  top ceiling movement 1/8
  ${i > 0 ? `left corner w${i - 1} over` : ""}
  ${i < 2 ? `right corner w${i + 1} under` : ""}
  lay field {
    bond stack
    joint ${inches(joint[0])} to ${inches(joint[1])}
    across full tile from left
  }
}`,
  )
  .join("\n")}
`;
  const rows: Rows = {
    face: face * MM,
    joint: [joint[0] * MM, joint[1] * MM],
    walls: walls.map(({ up, low }) => ({ bottom: low * MM, top: (up - 8) * MM })),
  };
  return { text, rows };
}
