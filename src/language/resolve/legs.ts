import type { Nm } from "../../measure/index.js";
import { formatLength } from "../../measure/index.js";
import type { Edge, Leg, Side, Step } from "../../model/index.js";
import type { LegStatement } from "../syntax.js";
import { lengthOf } from "./lengths.js";
import type { WallDraft } from "./wall-draft.js";

type Edges = Readonly<Record<Side, Edge>>;

/** The legs of a wall, one a side at most. */
export function resolveLegs(draft: WallDraft): Leg[] {
  const { scope, name: wall } = draft;
  const legs: Leg[] = [];
  for (const statement of draft.parts.all("leg")) {
    const leg = resolveLeg(statement, draft);
    if (!leg) continue;
    const first = legs.find(({ side }) => side === leg.side);
    const message = first
      ? `found a second leg at the ${leg.side}, wanted one`
      : faultOf(leg, legs, draft);
    if (message === null) legs.push(leg);
    else scope.report.tell("plan/leg", statement.head, message, { wall });
  }
  return legs;
}

function faultOf({ across }: Leg, others: readonly Leg[], draft: WallDraft): string | null {
  if (draft.outline) return "found a leg beside an outline, wanted the leg in the outline";
  const room = others.reduce((rest, other) => rest - other.across, draft.size.across);
  if (across < room) return null;
  const [found, most] = [across, room].map((nm) => formatLength(nm, draft.scope.units));
  return `found a leg ${found!} wide, wanted less than the ${most!} that the wall has there`;
}

function resolveLeg(statement: LegStatement, { scope, name }: WallDraft): Leg | null {
  const across = lengthOf(statement.across, "positive", scope, name);
  const down = lengthOf(statement.down, "positive", scope, name);
  const { joint, side } = statement;
  const width = joint && lengthOf(joint.width, "not-negative", scope, name);
  if (across === null || down === null) return null;
  const origin = scope.report.origin(statement);
  const foot: Edge = {
    side: "bottom",
    meets: { kind: statement.meets ?? "floor" },
    measured: [],
    outlined: false,
    joint: joint && width !== null ? { kind: joint.joint, width } : null,
    stated: true,
    origin,
  };
  return { side, across, down, foot, origin };
}

/**
 * A wall with legs is as deep as its longest; the pan between them, and what a shorter one leaves, are steps.
 * Its bottom is drawn in by its own joint, so the line of the bottom lies as much lower as that is wider than
 * the joint at the feet, which are steps as well.
 */
export function stepsOfLegs(
  legs: readonly Leg[],
  edges: Edges,
  { size, scope, name }: WallDraft,
): { readonly edges: Edges; readonly steps: readonly Step[] } {
  if (legs.length === 0) return { edges, steps: [] };
  const { bottom } = edges;
  if (bottom.measured.length > 0) {
    const message =
      "found readings along a bottom with a leg beside it, wanted a level one; they are left out";
    scope.report.tellAt("plan/leg", bottom.origin, message, { wall: name });
  }
  const foot = (side: Leg["side"]): Leg | undefined => legs.find((leg) => leg.side === side);
  const [left, right] = [foot("left"), foot("right")];
  const deepest: Nm = Math.max(...legs.map(({ down }) => down));
  const least = Math.min(...legs.map(({ foot: { joint } }) => joint?.width ?? 0));
  const floor = -deepest - Math.max(0, (bottom.joint?.width ?? 0) - least);
  const past = 2 * floor;
  const [from, to] = [-size.across, 2 * size.across];
  const level = { ...bottom, measured: [{ at: 0, off: floor }] };
  const pan: Step = {
    left: left ? left.across : from,
    right: right ? size.across - right.across : to,
    bottom: past,
    top: 0,
    meets: {
      left: left ? level : null,
      right: right ? level : null,
      bottom: null,
      top: level,
    },
  };
  const feet = legs.map((leg): Step => ({
    left: leg.side === "left" ? from : size.across - leg.across,
    right: leg.side === "left" ? leg.across : to,
    bottom: past,
    top: -leg.down,
    meets: { left: null, right: null, bottom: null, top: leg.foot },
  }));
  return { edges: { ...edges, bottom: level }, steps: [pan, ...feet] };
}
