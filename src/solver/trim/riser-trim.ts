import type { Nm } from "../../measure/index.js";
import { edgeTrim, type Opening, type Riser, type Wall } from "../../model/index.js";
import { type Box, grown } from "../box.js";
import { rangeBetween, valueAfter, valueAt } from "../chain.js";
import { sideDrawnIn } from "../draw-in.js";
import { beyond, slopeOf } from "../slope.js";
import { stepInset } from "../region.js";
import type { Region, TrimRun } from "../solved.js";
import { outerLine, slopeCuts, uprightReach } from "./end-lines.js";
import { openingGaps } from "./opening-gaps.js";
import { clearStretches, type Stretch } from "./stretches.js";
import { layStrip, SQUARE_ENDS } from "./strip.js";

/**
 * The trim along the risers at which a slope ends: as on the risers of steps it goes through, from the outer edge of what
 * is at its foot to the joint before the tile over the slope, along which it is cut (common practice).
 */
export function layRiserTrims(wall: Wall, region: Region<Opening>, joint: Nm): readonly TrimRun[] {
  return wall.risers.flatMap((riser) => runsOn(riser, wall, region, joint));
}

function runsOn(riser: Riser, wall: Wall, region: Region<Opening>, joint: Nm): TrimRun[] {
  const { edge, of, x } = riser;
  const trim = edgeTrim(edge.meets);
  if (!trim || !isLeft(riser, region, joint)) return [];
  const side = edge.side;
  const width = trim.face.across;
  const away = side === "left" ? 1 : -1;
  const strip = { low: Math.min(x, x + away * width), high: Math.max(x, x + away * width) };
  const inward = of === "bottom" ? 1 : -1;
  // Over the riser the region goes on along the slope as far as its tile stands off it.
  const end = sideDrawnIn(wall.edges[of], region[of], -joint, inward);
  const lines = {
    bottom: outerLine(wall, region, "bottom", joint),
    top: outerLine(wall, region, "top", joint),
  };
  const clear = uprightReach(wall, region, joint, strip);
  const { low, high } = rangeBetween(end, strip.low, strip.high);
  const reach = of === "bottom" ? { from: clear.from, to: high } : { from: low, to: clear.to };
  const gaps = openingGaps(region, side === "left" ? "right" : "left", strip);
  return longOnes(clearStretches(reach, gaps)).map(({ from, to }) => {
    const box: Box = { left: strip.low, right: strip.high, bottom: from, top: to };
    const wide = grown(box, 1);
    const past = slopeOf(of, end, wide);
    return layStrip({
      along: { edge },
      side,
      length: to - from,
      width,
      piece: trim.face.along,
      joint,
      ...SQUARE_ENDS,
      cuts: [
        ...slopeCuts(wall, { [of]: lines[of] }, box),
        beyond(wide, { ...past, side: of === "bottom" ? "top" : "bottom" }),
      ],
      direction: [0, 1],
      place: (along, inside) => [x + away * inside, from + along],
    });
  });
}

/** Whether tile really stands beside the riser: one that is lower than its joint is wide may be gone. */
function isLeft({ edge, of, x }: Riser, region: Region, joint: Nm): boolean {
  const at = x + (edge.side === "left" ? 1 : -1) * stepInset(edge, joint);
  return valueAt(region[of], at) !== valueAfter(region[of], at);
}

function longOnes(runs: readonly Stretch[]): Stretch[] {
  return runs.filter(({ from, to }) => to > from);
}
