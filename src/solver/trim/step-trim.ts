import type { Nm } from "../../measure/index.js";
import {
  type Edge,
  edgeTrim,
  type Opening,
  type Side,
  type Step,
  type Wall,
} from "../../model/index.js";
import { overlaps, type Box } from "../box.js";
import { rangeBetween } from "../chain.js";
import { stepInset } from "../region.js";
import type { Region, TrimRun } from "../solved.js";
import { openingGaps, type Width } from "./opening-gaps.js";
import type { Ring } from "../shape.js";
import { endAt, outerLine, slopeCuts, trimOver } from "./end-lines.js";
import { layStrip, SQUARE_ENDS } from "./strip.js";
import { clearStretches, type Stretch } from "./stretches.js";

/**
 * The trim along the steps of a wall's outline: a run on each tread and each riser that faces a trimmed side.
 * As along the wall's own sides, upright runs go through, and level ones stand between (common practice).
 */
export function layStepTrims(wall: Wall, region: Region<Opening>, joint: Nm): readonly TrimRun[] {
  const ground: Ground = { wall, region, joint };
  return wall.steps.flatMap((step, i) =>
    SIDES.flatMap((side) => {
      const edge = step.meets[side];
      const trim = edge && edgeTrim(edge.meets);
      if (!edge || !trim) return [];
      const width = trim.face.across;
      const at: StepSide = { step, grown: region.steps[i]!, side, edge, width };
      const isRiser = side === "left" || side === "right";
      const runs = isRiser ? riserRuns(at, ground) : treadRuns(at, ground);
      const gaps = openingGaps(region, side, acrossStrip(at));
      const clear = runs.flatMap((run) => clearStretches(run, gaps));
      return clear.map(({ from, to }) =>
        layStrip({
          along: { edge },
          side: edge.side,
          length: to - from,
          width,
          piece: trim.face.along,
          joint,
          ...SQUARE_ENDS,
          cuts: isRiser ? slopesOver(at, ground, { from, to }) : [],
          direction: isRiser ? [0, 1] : [1, 0],
          place: placeOn(step, side, from),
        }),
      );
    }),
  );
}

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

interface Ground {
  readonly wall: Wall;
  readonly region: Region<Opening>;
  readonly joint: Nm;
}

/** A side of a step with trim along it; what the step takes of the tile is `grown`. */
interface StepSide {
  readonly step: Step;
  readonly grown: Box;
  readonly side: Side;
  readonly edge: Edge;
  readonly width: Nm;
}

/** What the trim along a side of a step covers across itself. */
function acrossStrip({ step, side, width }: StepSide): Width {
  switch (side) {
    case "left":
    case "bottom":
      return { low: step[side] - width, high: step[side] };
    case "right":
    case "top":
      return { low: step[side], high: step[side] + width };
  }
}

/** The tile lies outside a step: under its bottom, over its top, beside its left and right. */
function placeOn(step: Step, side: Side, from: Nm): (along: Nm, inward: Nm) => readonly [Nm, Nm] {
  switch (side) {
    case "left":
      return (along, inward) => [step.left - inward, from + along];
    case "right":
      return (along, inward) => [step.right + inward, from + along];
    case "bottom":
      return (along, inward) => [from + along, step.bottom - inward];
    case "top":
      return (along, inward) => [from + along, step.top + inward];
  }
}

/** A riser ends along a slope over or under it. */
function slopesOver(at: StepSide, { wall, region, joint }: Ground, { from, to }: Stretch): Ring[] {
  const lines = {
    bottom: outerLine(wall, region, "bottom", joint),
    top: outerLine(wall, region, "top", joint),
  };
  const { low, high } = acrossStrip(at);
  return slopeCuts(wall, lines, { left: low, right: high, bottom: from, top: to });
}

/** From the joint over the tile at the step's inner corner to the outer edge of what trims the level above (or below). */
function riserRuns(at: StepSide, { wall, region, joint }: Ground): Stretch[] {
  const { step, grown } = at;
  const { low, high } = acrossStrip(at);
  const others = region.steps.filter(
    (other) => other !== grown && other.left < high && other.right > low,
  );
  const isOfTop = step.meets.bottom !== null;
  const inner = isOfTop ? grown.bottom + joint : grown.top - joint;
  const outer = isOfTop
    ? Math.min(
        endAt(wall, outerLine(wall, region, "top", joint), "top", { low, high }),
        ...others
          .filter((o) => o.bottom > grown.bottom)
          .map((o) => o.bottom + trimOver(wall, "top", joint)),
      )
    : Math.max(
        endAt(wall, outerLine(wall, region, "bottom", joint), "bottom", { low, high }),
        ...others
          .filter((o) => o.top < grown.top)
          .map((o) => o.top - trimOver(wall, "bottom", joint)),
      );
  return longOnes([isOfTop ? { from: inner, to: outer } : { from: outer, to: inner }]);
}

/** Between the risers at its ends, where there are any; else to the wall's end, or to where a slope goes on. */
function treadRuns(at: StepSide, { wall, region, joint }: Ground): Stretch[] {
  const { step, grown } = at;
  const { low, high } = acrossStrip(at);
  const strip: Box = { left: step.left, right: step.right, bottom: low, top: high };
  const from = rangeBetween(region.left, strip.bottom, strip.top).high;
  const to = rangeBetween(region.right, strip.bottom, strip.top).low;
  const others = [...region.steps, ...riserBoxes(wall, joint)].filter(
    (other) => other !== grown && overlaps(other, strip),
  );
  const reach = { from: Math.max(from, step.left), to: Math.min(to, step.right) };
  return longOnes(
    clearStretches(reach, others).map((run) => ({
      from:
        run.from === step.left
          ? step.left + startGap(step.meets.left, step.left - grown.left, joint)
          : run.from,
      to:
        run.to === step.right
          ? step.right - startGap(step.meets.right, grown.right - step.right, joint)
          : run.to,
    })),
  );
}

/** What risers of the wall's own sides take from the tile at their feet. */
function riserBoxes({ risers }: Wall, joint: Nm): Box[] {
  return risers.map(({ x, low, high, edge }) => {
    const to = x + (edge.side === "left" ? 1 : -1) * stepInset(edge, joint);
    return { left: Math.min(x, to), right: Math.max(x, to), bottom: low, top: high };
  });
}

/** How far a tread's trim stays off its step's own end: a joint off a riser's trim, or off the tile beside the step. */
function startGap(riser: Edge | null, grownBy: Nm, joint: Nm): Nm {
  return riser && !edgeTrim(riser.meets) ? joint - grownBy : joint;
}

function longOnes(runs: readonly Stretch[]): Stretch[] {
  return runs.filter(({ from, to }) => to > from);
}
