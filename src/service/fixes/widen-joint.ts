import { exactLength, formatLength } from "../../measure/index.js";
import { leastJoint, leastLongJoint } from "../../rules/index.js";
import type { Fixer } from "./fix.js";
import { isAtHead, statementAtHead } from "./statement-at-head.js";

/** Widens a joint to the least that the tiles which are laid with it may have; what is set stays as it is. */
export const widenJoint: Fixer = (state, diagnostic) => {
  const { code } = diagnostic;
  if (code !== "joint/too-narrow" && code !== "joint/long-tile") return [];
  const { plan } = state.outcome;
  const statement = statementAtHead(state, diagnostic.range);
  const wall = plan.walls.find(({ name }) => name === diagnostic.wall);
  const lays = wall?.lays.filter(({ joint }) => isAtHead(joint.origin, diagnostic.range)) ?? [];
  const [first] = lays;
  if (!first || statement?.kind !== "joint" || lays.some(({ set }) => set)) return [];
  const least = Math.max(
    ...lays.map((lay) => leastJoint(plan.limits, lay.tile.variation)),
    ...lays.map((lay) => leastLongJoint(plan.limits, lay) ?? 0),
  );
  const text = exactLength(least, plan.units);
  // A range that ends above the least keeps its end.
  const { min, max } = statement;
  const replaced =
    max && first.joint.max > least ? min : { start: min.start, end: (max ?? min).end };
  return [
    {
      title: `Widen the joint to ${formatLength(least, plan.units)}`,
      mends: diagnostic,
      preferred: true,
      edits: [{ range: state.tree.lines.range(replaced), text }],
    },
  ];
};
