import type { Nm } from "../../measure/index.js";
import { edgeTrim, type Opening, type Side, type Wall } from "../../model/index.js";
import type { Box } from "../box.js";
import { isStraight, valueAt, type Chain } from "../chain.js";
import type { Region, TrimRun } from "../solved.js";
import { openingGaps, type Width } from "./opening-gaps.js";
import { endAt, outerLine, slopeCuts, uprightReach } from "./end-lines.js";
import { slopeStrips } from "./slope-trim.js";
import { layRiserTrims } from "./riser-trim.js";
import { layStepTrims } from "./step-trim.js";
import { clearStretches } from "./stretches.js";
import { layStrip, type Strip, SQUARE_ENDS } from "./strip.js";

const SIDES = ["left", "right", "bottom", "top"] as const;

/**
 * The trim along the wall's free edges. Upright runs go through to a trimmed top or bottom; level
 * ones stand between the courses' ends (common practice), and leave out what steps take. None goes through
 * an opening, nor behind what stands before the wall.
 */
export function layFreeEdges(wall: Wall, region: Region<Opening>, joint: Nm): readonly TrimRun[] {
  const own = SIDES.flatMap((side) => stripsOf(wall, region, side, joint).map(layStrip));
  return [...own, ...layStepTrims(wall, region, joint), ...layRiserTrims(wall, region, joint)];
}

function stripsOf(wall: Wall, region: Region<Opening>, side: Side, joint: Nm): Strip[] {
  const edge = wall.edges[side];
  const trim = edgeTrim(edge.meets);
  if (!trim) return [];
  if (edge.outlined) return slopeStrips(wall, region, side, joint);
  const { face } = trim;
  const inward = side === "left" || side === "bottom" ? 1 : -1;
  // The region stands in from the bare side by the trim's width and one joint.
  const outer = outerLine(wall, region, side, joint);
  const isUpright = side === "left" || side === "right";
  const width = acrossStrip(outer, inward * face.across);
  const ends = isUpright
    ? {
        bottom: outerLine(wall, region, "bottom", joint),
        top: outerLine(wall, region, "top", joint),
      }
    : { left: region.left, right: region.right };
  const reach = isUpright
    ? uprightReach(wall, region, joint, width)
    : levelReach(wall, region, width);
  const steps = isUpright ? [] : stepsOn(wall, region, side);
  const openings = openingGaps(region, side, width);
  return clearStretches(reach, [...steps, ...openings]).map(({ from, to }) => ({
    along: { edge },
    side,
    length: to - from,
    width: face.across,
    piece: face.along,
    joint,
    ...SQUARE_ENDS,
    bends: isStraight(outer) ? [] : outer.at.map((at) => at - from),
    cuts: slopeCuts(
      wall,
      ends,
      isUpright
        ? { left: width.low, right: width.high, bottom: from, top: to }
        : { left: from, right: to, bottom: width.low, top: width.high },
    ),
    direction: isUpright ? [0, 1] : [1, 0],
    place: (along, inside) => {
      const across = valueAt(outer, from + along) + inward * inside;
      return isUpright ? [across, from + along] : [from + along, across];
    },
  }));
}

/** The steps of a bottom or a top: what they leave out, the side's own trim leaves out too. */
function stepsOn({ steps }: Wall, region: Region, side: Side): Box[] {
  const tread = side === "bottom" ? "top" : "bottom";
  return region.steps.filter((_, i) => steps[i]!.meets[tread] !== null);
}

/** From the strip's outer edge to its inner one. */
function acrossStrip({ value }: Chain, inward: Nm): Width {
  const edges = value.flatMap((outer) => [outer, outer + inward]);
  return { low: Math.min(...edges), high: Math.max(...edges) };
}

function levelReach(wall: Wall, region: Region, width: Width): { from: Nm; to: Nm } {
  return {
    from: endAt(wall, region.left, "left", width),
    to: endAt(wall, region.right, "right", width),
  };
}
