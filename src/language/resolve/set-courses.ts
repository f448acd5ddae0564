import { formatLength, type Nm } from "../../measure/index.js";
import type { MeasuredTop, SetCourses } from "../../model/index.js";
import type { SetStatement, WrittenTop } from "../syntax.js";
import { courseCount } from "./lay-courses.js";
import { lengthOf } from "./lengths.js";
import type { WallDraft } from "./wall-draft.js";

/** Courses that are set, counted over all runs of a lay from its lowest. */
export interface SetStretch extends SetCourses {
  /** The joint that they were set with; null for the lay's own. */
  readonly joint: Nm | null;
}

/** What of a lay is set, from the bottom up; each stretch stands on the one before it. */
export function resolveSet(
  statements: readonly SetStatement[],
  draft: WallDraft,
): readonly SetStretch[] {
  const read = statements.flatMap((statement) => {
    const stretch = stretchOf(statement, draft);
    return stretch ? [{ statement, stretch }] : [];
  });
  read.sort((a, b) => a.stretch.from - b.stretch.from);
  const kept: SetStretch[] = [];
  for (const { statement, stretch } of read) {
    const under = kept.at(-1);
    if (!under || stretch.from === under.to + 1) kept.push(stretch);
    else {
      const message =
        `found course ${stretch.from} as the first that is set over courses ${under.from} to ${under.to}, ` +
        `wanted course ${under.to + 1}`;
      tell(statement.first, message, draft);
    }
  }
  return kept;
}

function stretchOf(statement: SetStatement, draft: WallDraft): SetStretch | null {
  const from = courseCount(statement.first, "plan/set-courses", draft);
  const to = courseCount(statement.last, "plan/set-courses", draft);
  if (from === null || to === null) return null;
  if (from > to) {
    tell(
      statement.first,
      `found courses ${from} to ${to}, wanted the lower one first, such as \`set courses 1 to ${from}\``,
      draft,
    );
    return null;
  }
  const { scope, name: wall } = draft;
  const joint = statement.joint ? lengthOf(statement.joint, "not-negative", scope, wall) : null;
  return {
    from,
    to,
    joint,
    tops: topsOf(statement, draft),
    origin: scope.report.origin(statement),
  };
}

/** Where the top was measured, from left to right. */
function topsOf({ tops }: SetStatement, draft: WallDraft): MeasuredTop[] {
  return tops
    .flatMap((top): MeasuredTop[] => {
      const y = lengthOf(top.y, "any", draft.scope, draft.name);
      const at = placeOf(top, draft);
      if (y === null || at === undefined) return [];
      if (at !== null || tops.length === 1) return [{ at, y }];
      const message =
        "found a height without its place, wanted `at left`, `at right` or `at` and a length where several are measured";
      tell(top, message, draft);
      return [];
    })
    .sort((a, b) => a.at! - b.at!);
}

/** How far from the left; null where no place is said, undefined where it can't be. */
function placeOf({ at }: WrittenTop, draft: WallDraft): Nm | null | undefined {
  const { scope, name: wall, size } = draft;
  if (at === null) return null;
  if (at === "left") return 0;
  if (at === "right") return size.across;
  const x = lengthOf(at, "any", scope, wall);
  if (x === null) return undefined;
  if (x >= 0 && x <= size.across) return x;
  const [found, most] = [x, size.across].map((nm) => formatLength(nm, scope.units));
  tell(at, `found a place at ${found!}, wanted one on the wall, from 0 to ${most!}`, draft);
  return undefined;
}

function tell(
  at: { readonly start: number; readonly end: number },
  message: string,
  { scope, name: wall }: WallDraft,
): void {
  scope.report.tell("plan/set-courses", at, message, { wall });
}
