import type { Nm, Unit } from "../../measure/index.js";
import { type SolvedLay, tileLeftOf } from "../../solver/index.js";
import type { PoleMark } from "../paper/paper.js";
import { bothReadings } from "./reading.js";

/** What the marks of a pole are made from. */
export interface PoleGround {
  readonly lay: SolvedLay;
  readonly units: Unit;
}

/**
 * The upright story pole: the level line, the bottom and top of each course, and what openings take.
 * Each mark is read off its own exact height, so that no rounding adds up from course to course.
 */
export function uprightMarks({ lay, units }: PoleGround): PoleMark[] {
  const { bounds, takeaways } = lay.region;
  const courses = lay.courses.flatMap(({ number, bottom, top }) => [
    wish(bottom, `course ${lay.below + number} bottom`, "course"),
    wish(top, `course ${lay.below + number} top`, "course"),
  ]);
  const openings = takeaways.flatMap(({ opening, box }) => [
    wish(box.bottom, `tile ends under ${opening.name}`, "opening"),
    wish(box.top, `tile begins over ${opening.name}`, "opening"),
  ]);
  const inside = [...courses, ...openings].filter(
    ({ at }) => at >= bounds.bottom && at <= bounds.top,
  );
  return marksOf([wish(0, "level line", "datum"), ...inside], units);
}

/** The level story pole: the tiles' sides in course 1, and in course 2 where the bond shifts it. */
export function levelMarks({ lay, units }: PoleGround): PoleMark[] {
  const { bounds, takeaways } = lay.region;
  const told = lay.courses.slice(0, Math.min(lay.lattice.q, 2));
  const tiles = told.flatMap(({ number }, course) => tileSides(lay, course, number));
  const openings = takeaways.flatMap(({ opening, box }) => [
    wish(box.left, `tile ends left of ${opening.name}`, "opening"),
    wish(box.right, `tile begins right of ${opening.name}`, "opening"),
  ]);
  const inside = [...tiles, ...openings].filter(
    ({ at }) => at >= bounds.left && at <= bounds.right,
  );
  return marksOf([wish(0, "left end of the bare wall", "datum"), ...inside], units);
}

type Wish = Omit<PoleMark, "reading">;

function wish(at: Nm, what: string, weight: PoleMark["weight"]): Wish {
  return { at, what, weight };
}

function tileSides(lay: SolvedLay, course: number, number: number): Wish[] {
  const { pieces, lattice } = lay;
  const sides: Wish[] = [];
  let last = 0;
  for (let i = pieces.courseStart[course]!; i < pieces.courseStart[course + 1]!; i++) {
    const place = pieces.column[i]!;
    if (place === last) continue;
    last = place;
    const left = tileLeftOf(lattice, number, pieces.bounds[4 * i]!);
    sides.push(wish(left, `course ${lay.below + number}, tile ${place} left`, "course"));
    sides.push(
      wish(
        left + lattice.face.across,
        `course ${lay.below + number}, tile ${place} right`,
        "course",
      ),
    );
  }
  return sides;
}

/** In their order along the pole. */
function marksOf(wishes: readonly Wish[], units: Unit): PoleMark[] {
  return [...wishes]
    .sort((a, b) => a.at - b.at)
    .map((each) => ({ ...each, reading: bothReadings(each.at, units) }));
}
