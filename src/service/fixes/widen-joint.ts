import { formatLength } from "../../measure/index.js";
import { leastJoint, leastLongJoint } from "../../rules/index.js";
import type { Fixer } from "./fix.js";
import { jointEdit } from "./joint-edit.js";
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
  return [
    {
      title: `Widen the joint to ${formatLength(least, plan.units)}`,
      mends: diagnostic,
      preferred: true,
      edits: [jointEdit(state, statement, first.joint, least)],
    },
  ];
};
