import type { Tile } from "../../model/index.js";
import type { CourseRun, LayCoursesStatement, Literal } from "../syntax.js";
import type { PlanCode } from "./plan-code.js";
import type { PlainLay } from "./place-lays.js";
import { ratioOf } from "./ratio.js";
import type { WallDraft } from "./wall-draft.js";

/** Courses of one tile, one over another; null for as many as there is room for. */
export interface Run {
  readonly tile: Tile;
  readonly courses: number | null;
}

/** More courses than this are no wall. */
const MOST_COURSES = 10_000;

/** The runs of a list of courses from the bottom up; without a list, or a list of which nothing can be read, the lay's own. */
export function courseRuns(
  statement: LayCoursesStatement | undefined,
  lay: PlainLay,
  draft: WallDraft,
): readonly Run[] {
  const own: Run = { tile: lay.tile, courses: null };
  if (!statement) return [own];
  const runs = statement.runs.flatMap((run, i): Run[] => {
    const tile = tileOf(run, lay.tile, draft);
    const courses = run.many ? courseCount(run.many, "plan/lay-courses", draft) : null;
    if (run.many ? courses === null : i < statement.runs.length - 1) {
      if (!run.many) {
        draft.scope.report.tell(
          "plan/lay-courses",
          run,
          "found the rest before other courses, wanted it last",
          {
            wall: draft.name,
          },
        );
      }
      return [];
    }
    return tile ? [{ tile, courses }] : [];
  });
  return runs.length > 0 ? runs : [own];
}

/** A whole number of courses; null where it isn't one, which is told. */
export function courseCount(many: Literal, code: PlanCode, draft: WallDraft): number | null {
  const { quantity } = many;
  if (!quantity) return null;
  const ratio = quantity.unit === null ? ratioOf(quantity.amount) : null;
  if (ratio?.q === 1 && ratio.p > 0 && ratio.p <= MOST_COURSES) return ratio.p;
  const message = `found no number of courses, wanted a whole one from 1 to ${MOST_COURSES}, such as 8`;
  draft.scope.report.tell(code, many, message, { wall: draft.name });
  return null;
}

function tileOf({ tile: word }: CourseRun, own: Tile, draft: WallDraft): Tile | null {
  if (!word) return own;
  const { scope, name: wall } = draft;
  const declared = scope.tiles.find(word.text);
  if (declared) return declared.value;
  scope.tiles.tellUnknown(word, scope.report, wall);
  return null;
}
