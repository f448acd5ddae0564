import loadHighs from "highs";

/**
 * An independent answer for one direction of a wall without openings: the best start as a mixed
 * integer program, solved by HiGHS (Huangfu and Hall, "Parallelizing the dual revised simplex
 * method", 2018), one measure after the other (lexicographic goal programming). Lengths are
 * millimetres.
 */

/** A row of tiles between two straight sides, in one or more phases of a bond. */
export interface RowProblem {
  readonly length: number;
  readonly face: number;
  readonly joint: number;
  readonly sliver: number;
  /** 0 where the bond forces ends under half. */
  readonly half: number;
  /** For each phase: how far it is shifted, and in how many rows it is laid. */
  readonly phases: readonly { readonly shift: number; readonly rows: number }[];
}

export interface RowAnswer {
  readonly slivers: number;
  readonly underHalf: number;
  readonly imbalance: number;
  readonly cuts: number;
  readonly tiles: number;
}

const MEASURES = ["slivers", "underHalf", "imbalance", "cuts", "tiles"] as const;

const OPTIONS = {
  output_flag: false,
  mip_rel_gap: 0,
  mip_abs_gap: 0,
  mip_feasibility_tolerance: 1e-9,
  primal_feasibility_tolerance: 1e-9,
} as const;

/** How far a measure that is settled may be given up again for the next ones, in its own unit. */
const SLACK = 1e-6;

export type SolveRow = (problem: RowProblem) => RowAnswer;

/** Loads the solver once. */
export async function loadRowSolver(): Promise<SolveRow> {
  const highs = await loadHighs();
  return (problem) => {
    const answer: Record<string, number> = {};
    const settled: string[] = [];
    for (const measure of MEASURES) {
      const result = highs.solve(programOf(problem, measure, settled), OPTIONS);
      if (result.Status !== "Optimal") throw new Error(`${measure}: ${result.Status}`);
      answer[measure] = result.ObjectiveValue;
      settled.push(`${measure} <= ${result.ObjectiveValue + SLACK}`);
    }
    return answer as unknown as RowAnswer;
  };
}

/**
 * For phase i: a and b are what is seen of the first and last tile, d and e the part of a joint
 * beside them, k the number of the first tile and n how many there are. u, v tell slivers, g, h
 * cuts under half, c, f cuts, at the first and the last tile.
 */
function programOf(problem: RowProblem, measure: string, settled: readonly string[]): string {
  const { length, face, joint, sliver, half, phases } = problem;
  const module = face + joint;
  const rows: string[] = [...settled];
  const bounds = [`0 <= x <= ${module}`];
  const generals: string[] = [];
  const binaries: string[] = [];
  phases.forEach(({ shift }, i) => {
    // The first tile's near edge, and the last one's.
    rows.push(`x + ${module} k${i} - a${i} - d${i} = ${-face - shift}`);
    rows.push(`x + ${module} k${i} + ${module} n${i} + b${i} + e${i} = ${length - shift + module}`);
    for (const [seen, gap, isSliver, isUnder, isCut] of [
      [`a${i}`, `d${i}`, `u${i}`, `g${i}`, `c${i}`],
      [`b${i}`, `e${i}`, `v${i}`, `h${i}`, `f${i}`],
    ]) {
      rows.push(`${seen} + ${sliver} ${isSliver} >= ${sliver}`);
      rows.push(`${seen} + ${half} ${isUnder} + ${half} ${isSliver} >= ${half}`);
      rows.push(`${seen} + ${face} ${isCut} >= ${face}`);
      rows.push(`${gap} + ${joint} ${isCut} <= ${joint}`);
      bounds.push(`0 <= ${seen} <= ${face}`, `0 <= ${gap} <= ${joint}`);
      binaries.push(isSliver!, isUnder!, isCut!);
    }
    bounds.push(`-1000 <= k${i} <= 1000`, `2 <= n${i} <= 1000`);
    generals.push(`k${i}`, `n${i}`);
  });
  addMatching(phases.length, face, rows, binaries);
  const sum = (one: string, other: string) =>
    phases.map(({ rows: r }, i) => `- ${r} ${one}${i} - ${r} ${other}${i}`).join(" ");
  rows.push(`slivers ${sum("u", "v")} = 0`);
  rows.push(`underHalf ${sum("g", "h")} = 0`);
  rows.push(`cuts ${sum("c", "f")} = 0`);
  rows.push(`tiles ${phases.map(({ rows: r }, i) => `- ${r} n${i}`).join(" ")} = 0`);
  rows.push(`imbalance ${phases.map((_, i) => `- t${i}`).join(" ")} = 0`);
  return [
    "Minimize",
    ` obj: ${measure}`,
    "Subject To",
    ...rows.map((row, i) => ` r${i}: ${row}`),
    "Bounds",
    ...bounds.map((bound) => ` ${bound}`),
    "Generals",
    ` ${generals.join(" ")}`,
    "Binaries",
    ` ${binaries.join(" ")}`,
    "End",
  ].join("\n");
}

/** t is how much each first end differs from the last end it is matched with, w which one that is. */
function addMatching(phases: number, face: number, rows: string[], binaries: string[]): void {
  for (let i = 0; i < phases; i++) {
    for (let j = 0; j < phases; j++) {
      rows.push(`t${i} - a${i} + b${j} - ${face} w${i}_${j} >= ${-face}`);
      rows.push(`t${i} + a${i} - b${j} - ${face} w${i}_${j} >= ${-face}`);
      binaries.push(`w${i}_${j}`);
    }
    const all = Array.from({ length: phases }, (_, j) => j);
    rows.push(`${all.map((j) => `w${i}_${j}`).join(" + ")} = 1`);
    rows.push(`${all.map((j) => `w${j}_${i}`).join(" + ")} = 1`);
  }
}
