import { type Nm, toMillimetres as mm } from "../../measure/index.js";
import type { SolvedLay, SolvedPlan, SolvedWall } from "../../solver/index.js";
import type { PoleMark } from "../paper/paper.js";
import { courseRows } from "../setting-out/course-table.js";
import { type LevelLine, levelLine, workingLine } from "../setting-out/level-line.js";
import { plumbLines } from "../setting-out/plumb-lines.js";
import { levelMarks, uprightMarks } from "../setting-out/pole-marks.js";
import type { SiteCheck, SiteMeasure, Stop } from "../setting-out/site-check.js";
import { siteChecks } from "../setting-out/site-checks.js";

/** What is struck, marked and checked on a wall; lengths are millimetres, exact to the nanometre. */
export function settingOutJson(plan: SolvedPlan, wall: SolvedWall): object {
  const working = workingLine(plan, wall);
  const levels = [levelLine(wall, 0, null), ...(working && working.y !== 0 ? [working] : [])];
  return {
    lays: wall.lays.map(layJson),
    levelLines: levels.map(levelJson),
    plumbLines: wall.lays.flatMap((lay) => plumbLines(wall, lay)).map(plumbJson),
    courses: wall.lays.flatMap(courseRows).map(courseJson),
    checks: siteChecks(plan, wall).map(checkJson),
    marks: {
      up: marksJson(wall, plan, uprightMarks),
      across: marksJson(wall, plan, levelMarks),
    },
  };
}

export function layJson({ lay, joint }: SolvedLay): object {
  const { tile, bond } = lay;
  return {
    tile: tile.name,
    face: [mm(tile.face.across), mm(tile.face.up)],
    thickness: mm(tile.thickness),
    joint: mm(joint),
    bond: bond.kind === "stack" ? "stack" : `running ${bond.p}/${bond.q}`,
  };
}

function levelJson({ y, course, overLow, overHigh }: LevelLine): object {
  const point = ({ at, rise }: LevelLine["overLow"]) => ({ at: mm(at), rise: mm(rise) });
  return { at: mm(y), course, overLow: point(overLow), overHigh: point(overHigh) };
}

function plumbJson({ side, x, fromEnd, ends }: ReturnType<typeof plumbLines>[number]): object {
  return {
    side,
    at: mm(x),
    fromEnd: fromEnd.map(({ at, distance }) => ({ at: mm(at), distance: mm(distance) })),
    ends: ends.map(({ course, width, seen }) => ({ course, width: mm(width), seen: mm(seen) })),
  };
}

export function courseJson({
  number,
  bottom,
  top,
  cut,
  heights,
  meets,
}: ReturnType<typeof courseRows>[number]): object {
  return {
    number,
    bottom: mm(bottom),
    top: mm(top),
    cut,
    left: mm(heights.left),
    middle: mm(heights.middle),
    right: mm(heights.right),
    meets: meets.map((met) =>
      met.kind === "hole"
        ? { hole: met.hole.name }
        : { opening: met.opening.name, place: met.place, rest: mm(met.rest) },
    ),
  };
}

function checkJson({ measure, planned, least, most }: SiteCheck): object {
  return {
    ...measureJson(measure),
    planned: mm(planned),
    least: stopJson(least),
    most: stopJson(most),
  };
}

function measureJson(measure: SiteMeasure): object {
  const { kind } = measure;
  switch (kind) {
    case "side":
      return { measure: kind, side: measure.side, at: orNull(measure.at) };
    case "width":
      return { measure: kind, at: mm(measure.at) };
    case "opening":
      return { measure: kind, opening: measure.opening.name, side: measure.side };
    case "build":
      return { measure: kind, side: measure.side, wall: measure.other };
    case "run":
      return { measure: kind, direction: measure.direction, count: measure.count };
  }
}

function stopJson(stop: Stop | null): object | null {
  return stop && { at: mm(stop.at), then: stop.then };
}

function orNull(nm: Nm | null): number | null {
  return nm === null ? null : mm(nm);
}

function marksJson(wall: SolvedWall, plan: SolvedPlan, marksOf: typeof uprightMarks): object[] {
  const { units } = plan.plan;
  return wall.lays.flatMap((lay) =>
    marksOf({ lay, units }).map(({ at, what }: PoleMark) => ({ at: mm(at), what })),
  );
}
