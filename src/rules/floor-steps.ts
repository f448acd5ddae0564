import type { Nm } from "../measure/index.js";
import type { Wall } from "../model/index.js";

/** Where a wall's floor steps: how far it rises there, seen rightwards. */
export interface FloorStep {
  readonly at: Nm;
  readonly rise: Nm;
}

/** The upright steps in the bottom of a bare wall, from left to right; a leg's sides too. */
export function floorSteps({ steps, risers, size, edges }: Wall): FloorStep[] {
  const treads = steps.filter(({ meets }) => meets.top !== null);
  const line = Math.min(0, ...edges.bottom.measured.map(({ off }) => off));
  const heightOver = (x: Nm, beside: 1 | -1): Nm => {
    const over = treads.filter(({ left, right }) =>
      beside > 0 ? left <= x && x < right : left < x && x <= right,
    );
    return Math.max(line, ...over.map(({ top }) => top));
  };
  const ofTreads = treads
    .flatMap(({ left, right }) => [left, right])
    .filter((x) => x > 0 && x < size.across)
    .map((at) => ({ at, rise: heightOver(at, 1) - heightOver(at, -1) }));
  const ofRisers = risers
    .filter(({ of }) => of === "bottom")
    .map(({ x, low, high, edge }) => ({
      at: x,
      // Of a left edge the tile stands right of the riser: the floor falls there.
      rise: edge.side === "left" ? low - high : high - low,
    }));
  const all = new Map([...ofTreads, ...ofRisers].map((step) => [step.at, step]));
  return [...all.values()].filter(({ rise }) => rise !== 0).sort((a, b) => a.at - b.at);
}
