import type { Rule } from "./rule.js";
import { setName } from "./set-words.js";

/** Courses that a plan says are set and that its lay doesn't have. */
export const setNoCourse: Rule = {
  code: "set/no-course",
  severity: "warning",
  title: "more courses are said to be set than there are",
  source: "the plan language",
  limit: null,
  ofSet: true,
  check: (wall) =>
    wall.lays.flatMap((laid) => {
      const { lay, courses, below } = laid;
      if (!lay.set || lay.set.to <= courses.length) return [];
      const message =
        `${setName(laid)!} are said to be set, and the last course is course ${below + courses.length}; ` +
        "wanted courses that are on the wall";
      return [{ origin: lay.set.origin, blocks: [lay, lay.tile, wall.wall], message }];
    }),
};
