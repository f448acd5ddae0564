import type { Nm } from "../../measure/index.js";
import type { SetCourses } from "../../model/index.js";
import type { Run } from "./lay-courses.js";
import type { SetStretch } from "./set-courses.js";

/** Courses of one run that are laid by themselves: what of it is set, and what is not. */
export interface RunPart extends Run {
  /** What of it is set, in its own courses. */
  readonly set: SetCourses | null;
  /** The joint that it was set with; null for the lay's own. */
  readonly joint: Nm | null;
  /** The course of the lay that it stands on within its run; 0 where it is the run's first part. */
  readonly over: number;
}

/**
 * The runs of a lay, each parted where what is set ends, so that only what is over it is laid anew. Courses
 * under the first that is set (they stand under the ledger until the rest has set) go with those over them.
 */
export function partsOf(runs: readonly Run[], stretches: readonly SetStretch[]): RunPart[] {
  let below = 0;
  return runs.flatMap((run) => {
    const first = below + 1;
    const last = run.courses === null ? Infinity : below + run.courses;
    const parts: RunPart[] = [];
    let under = below;
    for (const { from, to, joint, tops, origin } of stretches) {
      if (from > last || to < first) continue;
      const end = Math.min(to, last);
      parts.push({
        tile: run.tile,
        courses: end - under,
        set: {
          from: Math.max(from, first) - under,
          to: end - under,
          // The top that was measured is the last run's.
          tops: to <= last ? tops : [],
          origin,
        },
        joint,
        over: parts.length === 0 ? 0 : under,
      });
      under = end;
    }
    if (under < last) {
      const courses = run.courses === null ? null : last - under;
      const over = parts.length === 0 ? 0 : under;
      parts.push({ tile: run.tile, courses, set: null, joint: null, over });
    }
    below = last;
    return parts;
  });
}
