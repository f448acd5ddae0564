import type { Plan } from "../../model/index.js";

/** What a plan says of water, as far as a plan can. */
export interface Water {
  /** A wall stands over a tub or a pan. */
  readonly wet: boolean;
  /** There is a window in such a plan: its glazing is in or near a tub or shower. */
  readonly glazed: boolean;
}

export function waterOf(plan: Plan): Water {
  const wet = plan.walls.some(({ edges }) =>
    Object.values(edges).some(({ meets }) => meets.kind === "tub" || meets.kind === "pan"),
  );
  const windows = plan.walls.some(({ openings }) => openings.some(({ kind }) => kind === "window"));
  return { wet, glazed: wet && windows };
}
