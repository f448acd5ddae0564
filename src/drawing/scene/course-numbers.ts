import { type Course, isSetCourse, softJoints, type SolvedWall } from "../../solver/index.js";
import { boxesOverlap, lineHeight, makeLabel } from "../labels.js";
import { across, down } from "../picture.js";
import type { Label, PictureBox } from "../scene.js";
import { textWidth } from "../text-metrics.js";
import { isMain } from "./main-lay.js";
import type { Setting } from "./setting.js";

const NUMBER_SIZE = 0.8;

/** The number of each course at its right end; every fifth, tenth ... where courses are low. */
export function courseNumbers(solved: SolvedWall, bare: PictureBox, { em }: Setting): Label[] {
  const size = NUMBER_SIZE * em;
  const numbers = solved.lays.filter(isMain).flatMap((lay) => {
    const { face, joint } = lay.lattice;
    const { bottom: low, top: high } = lay.region.bounds;
    const course = across(face.up + joint);
    const step = [1, 2, 5, 10, 20, 50, 100].find((n) => n * course >= lineHeight(size)) ?? 1000;
    // That a course is set already is said in words, whatever the colours.
    const textOf = ({ number }: Course): string =>
      `${lay.below + number}${isSetCourse(lay, number) ? " set" : ""}`;
    const widest = Math.max(0, ...lay.courses.map((course) => textWidth(textOf(course), size)));
    return lay.courses
      .filter(({ number }) => step === 1 || number === 1 || (lay.below + number) % step === 0)
      .map((course) =>
        makeLabel({
          text: textOf(course),
          role: "number",
          x: bare.right + 0.5 * em + widest,
          y: down((Math.max(course.bottom, low) + Math.min(course.top, high)) / 2),
          size,
          anchor: "end",
        }),
      );
  });
  // A course that is cut low, or lies between lays, stands nearer to the next one than a whole course does.
  return clearOfEachOther(numbers);
}

/** Which level joints are soft, said beside the courses' numbers. */
export function softLabels(
  solved: SolvedWall,
  bare: PictureBox,
  numbers: readonly Label[],
  { em }: Setting,
): Label[] {
  const outer = Math.max(bare.right, ...numbers.map((label) => label.box.right));
  const labels = softJoints(solved)
    .runs.filter(({ way }) => way === "level")
    .map(({ from, to }) =>
      makeLabel({
        text: "soft",
        role: "number",
        x: outer + 0.5 * em,
        y: down((from + to) / 2),
        size: NUMBER_SIZE * em,
        anchor: "start",
      }),
    );
  return clearOfEachOther(labels);
}

function clearOfEachOther(labels: readonly Label[]): Label[] {
  return labels.reduce<Label[]>(
    (kept, label) =>
      kept.some(({ box }) => boxesOverlap(box, label.box)) ? kept : [...kept, label],
    [],
  );
}
