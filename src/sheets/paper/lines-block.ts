import type { SolvedWall } from "../../solver/index.js";
import { plainText } from "../../drawing/index.js";
import { laysToCome } from "../setting-out/lay-to-come.js";
import { type LevelLine, levelLine, workingLine } from "../setting-out/level-line.js";
import { type PlumbLine, plumbLines } from "../setting-out/plumb-lines.js";
import { tableOfSome, text } from "./blocks.js";
import type { Ground } from "./ground.js";
import type { Block } from "./paper.js";

/** The lines that are struck before anything is set. */
export function linesBlocks(ground: Ground, wall: SolvedWall): Block[] {
  const working = workingLine(ground.solved, wall);
  if (!working) return [];
  const datum = levelLine(wall, 0, null);
  const levels = working.y === 0 ? [working] : [datum, working];
  const lays = laysToCome(wall);
  const plumbs = lays.flatMap((lay) => {
    const whose = lays.length > 1 ? ` of ${plainText(lay.lay.name)}` : "";
    return plumbLines(wall, lay).map((line) => ({ line, whose }));
  });
  return [
    ...tableOfSome(
      "Level lines",
      ["Line", ">From the datum", "Over the low point of the bottom", "Over the high point"],
      levels.map((line) => levelRow(ground, line)),
    ),
    ...tableOfSome(
      "Plumb lines",
      ["Line", ">From the left end", "To its own end of the bare wall", "What is cut between them"],
      plumbs.map(({ line, whose }) => plumbRow(ground, line, whose)),
    ),
    ...(plumbs.length === 0
      ? [text("No plumb line: the wall is too narrow for one between its end tiles.")]
      : []),
  ];
}

function levelRow({ both, length }: Ground, line: LevelLine): string[] {
  const { y, course, overLow, overHigh } = line;
  const name =
    course === null ? "datum (the plan's level line)" : `working line: bottom of course ${course}`;
  const over = ({ at, rise }: LevelLine["overLow"]): string =>
    `${both(Math.abs(rise))}${rise < 0 ? " under it" : ""}, at ${length(at)} from the left`;
  return [name, both(y), over(overLow), over(overHigh)];
}

function plumbRow(
  { both, length }: Ground,
  { side, x, fromEnd, ends }: PlumbLine,
  whose: string,
): string[] {
  const same = fromEnd.every(({ distance }) => distance === fromEnd[0]!.distance);
  const distances = same
    ? [`${both(fromEnd[0]!.distance)}, all the way up`]
    : fromEnd.map(({ at, distance }) => `${both(distance)} at ${length(at)} up`);
  const cuts = ends.map(({ course, width, seen }) => {
    const covered = seen < width ? ` (${length(seen)} seen)` : "";
    return `course ${course}: ${length(width)} wide${covered}`;
  });
  return [`${side} plumb line${whose}`, both(x), distances.join("; "), cuts.join("; ")];
}
