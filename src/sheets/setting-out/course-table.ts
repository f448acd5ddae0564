import type { Nm } from "../../measure/index.js";
import type { Hole, Opening } from "../../model/index.js";
import {
  type Chain,
  countingLay,
  type LayPatch,
  rangeBetween,
  type SolvedLay,
  type Takeaway,
  valueAt,
} from "../../solver/index.js";

/** A course as it is set. */
export interface CourseRow {
  /** Counted on from the lays below it. */
  readonly number: number;
  /** The lay whose courses are counted by themselves; null for the wall's main ones. */
  readonly lay: string | null;
  /** The bottom and top of its whole tiles, from the level line. */
  readonly bottom: Nm;
  readonly top: Nm;
  /** Whether the bottom or the top of the tiled wall cuts it anywhere. */
  readonly cut: boolean;
  /** How high its pieces are at the left end, in the middle and at the right end; 0 where none is. */
  readonly heights: { readonly left: Nm; readonly middle: Nm; readonly right: Nm };
  readonly meets: readonly Met[];
}

/** What a course runs into. */
export type Met =
  /** `rest`: how high the course is under or over the opening; the face where it is beside it. */
  | {
      readonly kind: "opening";
      readonly opening: Opening | LayPatch;
      readonly place: "under" | "over" | "beside";
      readonly rest: Nm;
    }
  | { readonly kind: "hole"; readonly hole: Hole };

/** Every course from the bottom up. */
export function courseRows(lay: SolvedLay): CourseRow[] {
  const { bounds } = lay.region;
  const places = {
    left: bounds.left,
    middle: Math.floor((bounds.left + bounds.right) / 2),
    right: bounds.right,
  };
  return lay.courses.map(({ number, bottom, top }) => {
    const heightAt = (x: Nm): Nm => {
      const low = Math.max(bottom, valueAt(lay.region.bottom, x));
      const high = Math.min(top, valueAt(lay.region.top, x));
      return Math.max(0, high - low);
    };
    return {
      number: lay.below + number,
      lay: countingLay(lay),
      bottom,
      top,
      cut: isCut(lay, bottom, top),
      heights: {
        left: heightAt(places.left),
        middle: heightAt(places.middle),
        right: heightAt(places.right),
      },
      meets: [
        ...lay.region.takeaways.flatMap((taken) => openingMet(taken, bottom, top)),
        ...lay.region.roundHoles
          .filter(({ box }) => box.bottom < top && box.top > bottom)
          .map(({ hole }) => ({ kind: "hole", hole }) as const),
      ],
    };
  });
}

/** Whether the wall's bottom or top cuts a course that runs between these heights. */
export function isCut({ region }: SolvedLay, bottom: Nm, top: Nm): boolean {
  const { left, right } = region.bounds;
  const range = (chain: Chain) => rangeBetween(chain, left, right);
  return range(region.bottom).high > bottom || range(region.top).low < top;
}

function openingMet({ opening, box }: Takeaway, bottom: Nm, top: Nm): Met[] {
  if (box.bottom >= top || box.top <= bottom) return [];
  const under = box.bottom - bottom;
  const over = top - box.top;
  if (under <= 0 && over <= 0) {
    return [{ kind: "opening", opening, place: "beside", rest: top - bottom }];
  }
  const found: Met[] = [];
  if (under > 0) found.push({ kind: "opening", opening, place: "under", rest: under });
  if (over > 0) found.push({ kind: "opening", opening, place: "over", rest: over });
  return found;
}
