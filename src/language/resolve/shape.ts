import type { Nm } from "../../measure/index.js";
import {
  type Corner,
  type Edge,
  isCorner,
  type Reading,
  type Riser,
  type Side,
  type Step,
  type Wall,
} from "../../model/index.js";
import type { OutlineRiser, OutlineStep } from "./level-side.js";
import { resolveLegs, stepsOfLegs } from "./legs.js";
import type { WallDraft } from "./wall-draft.js";

type Edges = Readonly<Record<Side, Edge>>;

/** The shape of a wall: its sides with the slopes of its outline, and what its steps leave out. */
export type WallShape = Pick<Wall, "edges" | "outline" | "steps" | "risers" | "legs">;

/** Gives the sides of a wall the slopes of its outline. Readings on a side that isn't straight are told. */
export function shapeOf(draft: WallDraft, stated: Edges): WallShape {
  const { outline, size } = draft;
  const legs = resolveLegs(draft);
  if (!outline) {
    const { edges, steps } = stepsOfLegs(legs, stated, draft);
    return { edges, outline: null, steps, risers: [], legs };
  }
  const { left, right, bottom, top } = outline.sides;
  const across = (line: readonly Corner[], base: Nm) =>
    line.map(({ x, y }) => ({ at: x, off: y - base }));
  const upright = (line: readonly Corner[], base: Nm) =>
    line.map(({ x, y }) => ({ at: y, off: x - base }));
  const bend = (side: Side, readings: readonly Reading[], steps: readonly OutlineStep[]) =>
    bent(stated[side], readings, steps, draft);
  const edges = {
    left: bend("left", upright(left, 0), []),
    right: bend("right", upright(right, size.across), []),
    bottom: bend("bottom", across(bottom.line, 0), bottom.steps),
    top: bend("top", across(top.line, size.up), top.steps),
  };
  const steps = [...bottom.steps, ...top.steps].map((step) => stepOf(step, edges));
  const risers = ([bottom, top] as const).flatMap((level, i) =>
    level.risers.map((riser) => riserOf(riser, i === 0 ? "bottom" : "top", edges)),
  );
  return { edges, outline: outline.corners, steps, risers, legs };
}

/** A side along its outline; readings are added to it where it is one straight line. */
function bent(
  edge: Edge,
  readings: readonly Reading[],
  steps: readonly OutlineStep[],
  { scope, name }: WallDraft,
): Edge {
  const [first] = readings;
  const off = first?.off ?? 0;
  const isStraight = readings.every((reading) => reading.off === off);
  if (edge.measured.length > 0 && isStraight && steps.length === 0) {
    return { ...edge, measured: edge.measured.map((each) => ({ ...each, off: each.off + off })) };
  }
  if (edge.measured.length > 0) {
    const message = `found readings along a ${edge.side} that the outline bends, wanted them in the outline; they are left out`;
    scope.report.tellAt("plan/outline", edge.origin, message, { wall: name });
  }
  if (isStraight) return { ...edge, measured: off === 0 ? [] : [{ at: 0, off }] };
  return { ...edge, measured: readings, outlined: true };
}

/** What a side meets at a step: its corner is where the wall ends, and no other wall stands here. */
function atStep(edge: Edge): Edge {
  return isCorner(edge.meets) ? { ...edge, meets: { kind: "wall" } } : edge;
}

function stepOf({ meets, ...box }: OutlineStep, edges: Edges): Step {
  const edgeOf = (side: Side): Edge | null => {
    const facing = meets[side];
    return facing && atStep(edges[facing]);
  };
  return {
    ...box,
    meets: {
      left: edgeOf("left"),
      right: edgeOf("right"),
      bottom: edgeOf("bottom"),
      top: edgeOf("top"),
    },
  };
}

function riserOf({ x, low, high, solid }: OutlineRiser, of: Riser["of"], edges: Edges): Riser {
  return { of, x, low, high, edge: atStep(edges[solid]) };
}
