import type { Nm } from "../../measure/index.js";
import type { Opening, Side } from "../../model/index.js";
import type { Box } from "../box.js";
import { frameOuter, openingBox } from "../region.js";
import type { Region, Takeaway } from "../solved.js";

/** What a strip of trim covers in the direction across it. */
export interface Width {
  readonly low: Nm;
  readonly high: Nm;
}

/**
 * Where trim along a side has to stop for openings and what stands before the wall, as places along it. One that
 * comes into the strip ends the trim where it ends the tile; one whose soft joint alone does leaves it be.
 */
export function openingGaps(
  { takeaways }: Region<Opening>,
  side: Side,
  { low, high }: Width,
): { readonly left: Nm; readonly right: Nm }[] {
  const isUpright = side === "left" || side === "right";
  return takeaways.flatMap((takeaway) => {
    const solid = solidBox(takeaway);
    const [from, to] = isUpright ? [solid.left, solid.right] : [solid.bottom, solid.top];
    if (from >= high || to <= low) return [];
    const { left, right, bottom, top } = takeaway.box;
    return [isUpright ? { left: bottom, right: top } : { left, right }];
  });
}

/** The opening with its frame and no joint round it, down to the floor or up to the ceiling where it goes on so far. */
export function solidBox({ opening, box }: Takeaway<Opening>): Box {
  const solid = frameOuter(opening) ?? openingBox(opening);
  if (opening.reaches === "floor") return { ...solid, bottom: box.bottom };
  return opening.reaches === "ceiling" ? { ...solid, top: box.top } : solid;
}
