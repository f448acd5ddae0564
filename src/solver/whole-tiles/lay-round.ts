import type { Hole, Opening } from "../../model/index.js";
import type { Box } from "../box.js";
import type { SolvedLay, SolvedWall } from "../solved.js";

/**
 * The lay that an opening or a hole lies in: of the wall's lays the one that has most of what it
 * takes; null where none has any of it. A lay round another one has nothing of what that one has.
 */
export function layRound(wall: SolvedWall, thing: Opening | Hole): SolvedLay | null {
  const { takeaways, roundHoles } = wall.region;
  const box =
    takeaways.find(({ opening }) => opening === thing)?.box ??
    roundHoles.find(({ hole }) => hole === thing)?.box;
  if (!box) return null;
  const shares = wall.lays.map((lay) => ({ lay, share: shareOf(lay, box) }));
  const most = Math.max(...shares.map(({ share }) => share));
  return most > 0 ? shares.find(({ share }) => share === most)!.lay : null;
}

/** The lay whose tile stops at the wall's top, the first of those beside each other; null where none does. */
export function topLay({ lays }: SolvedWall): SolvedLay | null {
  return lays.find(({ inner }) => !inner.includes("top")) ?? null;
}

/** How much of a box a lay has, square nanometres: only compared, so that rounding does no harm. */
function shareOf({ region }: SolvedLay, box: Box): number {
  return region.takeaways
    .filter(({ opening }) => opening.kind === "lay")
    .reduce((share, other) => share - sharedArea(other.box, box), sharedArea(region.bounds, box));
}

function sharedArea(a: Box, b: Box): number {
  const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const up = Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom);
  return Math.max(0, across) * Math.max(0, up);
}
