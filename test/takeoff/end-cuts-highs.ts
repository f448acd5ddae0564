import loadHighs from "highs";

/**
 * An independent answer to how many pairs of ends can share tiles: an integer program over the sizes,
 * solved by HiGHS (Huangfu and Hall, "Parallelizing the dual revised simplex method", 2018).
 */

/** Ends of one size that need the same edge of a tile. */
export interface EndKind {
  readonly size: number;
  readonly side: string;
  readonly count: number;
}

export type MostPairs = (
  kinds: readonly EndKind[],
  suits: (a: EndKind, b: EndKind) => boolean,
) => number;

const OPTIONS = { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0 } as const;

/** Loads the solver once. */
export async function loadMostPairs(): Promise<MostPairs> {
  const highs = await loadHighs();
  return (kinds, suits) => {
    const program = programOf(kinds, suits);
    if (program === null) return 0;
    const result = highs.solve(program, OPTIONS);
    if (result.Status !== "Optimal") throw new Error(result.Status);
    return Math.round(result.ObjectiveValue);
  };
}

/** x_i_j tells how many ends of kind i share a tile with one of kind j; null when none can. */
function programOf(
  kinds: readonly EndKind[],
  suits: (a: EndKind, b: EndKind) => boolean,
): string | null {
  const pairs = kinds.flatMap((a, i) =>
    kinds.flatMap((b, j) => (i <= j && suits(a, b) ? [{ i, j, name: `x_${i}_${j}` }] : [])),
  );
  if (pairs.length === 0) return null;
  const rows = kinds.flatMap(({ count }, k) => {
    const terms = pairs
      .filter(({ i, j }) => i === k || j === k)
      .map(({ i, j, name }) => `${i === j ? 2 : 1} ${name}`);
    return terms.length > 0 ? [` k${k}: ${terms.join(" + ")} <= ${count}`] : [];
  });
  return [
    "Maximize",
    ` obj: ${pairs.map(({ name }) => name).join(" + ")}`,
    "Subject To",
    ...rows,
    "Generals",
    ` ${pairs.map(({ name }) => name).join(" ")}`,
    "End",
  ].join("\n");
}
