import { counted, exactLength, formatLength, type Nm, type Unit } from "../measure/index.js";
import { type Diagnostic, type Edge, edgeTrim, faceWords, type Side } from "../model/index.js";
import {
  cutOf,
  pieceBounds,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
  type TrimRun,
} from "../solver/index.js";
import { plateWords } from "./plate-words.js";
import { layReading } from "./reading.js";
import { softPlaces } from "./soft-places.js";
import { spacerWords } from "./spacer-words.js";
import { acrossWords, upWords } from "./start-words.js";

/**
 * A solved plan course by course, as lines that change only where the wall does: a course is told by
 * its pieces, without its number or height, so that one more course is one more line. For git, which
 * then shows changes of a plan as changes of cuts.
 */
export function* showText(
  { plan, walls }: SolvedPlan,
  diagnostics: readonly Diagnostic[],
): Generator<string> {
  if (plan.title) yield `plan ${plan.title}\n`;
  for (const wall of walls) yield* wallText(wall, plan.units);
  if (diagnostics.length > 0) yield "\nfindings\n";
  for (const { severity, code, wall, message, allowed } of diagnostics) {
    const weight =
      allowed === undefined ? (severity === "information" ? "note" : severity) : "allowed";
    yield `  ${wall === undefined ? "" : `${wall}: `}${weight} ${code}: ${message}\n`;
  }
}

const SIDES: readonly Side[] = ["bottom", "left", "right", "top"];

function* wallText(solved: SolvedWall, units: Unit): Generator<string> {
  const { wall, lays, trims, insides, refused } = solved;
  const length = (nm: Nm) => formatLength(nm, units);
  yield `\nwall ${wall.name}${wall.title ? ` "${wall.title}"` : ""}\n`;
  yield `  ${length(wall.size.across)} x ${length(wall.size.up)}\n`;
  for (const side of SIDES) yield `  ${side} ${edgeText(wall.edges[side], length)}\n`;
  for (const { kind, name, at, size } of wall.openings) {
    const place = `at ${length(at.x)}, ${length(at.y)}`;
    yield `  ${kind} ${name} ${place}, ${length(size.across)} x ${length(size.up)}\n`;
  }
  for (const { name, at, across, plate } of wall.holes) {
    const covered = plate ? `, plate ${plateWords(plate, length)}` : "";
    yield `  hole ${name} at ${length(at.x)}, ${length(at.y)}, ${length(across)} across${covered}\n`;
  }
  if (refused) yield `  not laid: it asks for ${refused.pieces} pieces\n`;
  for (const lay of lays) yield* layText(solved, lay, units);
  for (const place of softPlaces(solved, units)) yield `  soft joint ${place}\n`;
  for (const run of trims) yield `  ${trimText(run, length)}\n`;
  for (const inside of insides) {
    const { across, up } = inside.wall.size;
    const name = `${inside.opening.kind} ${inside.opening.name}, ${faceWords(inside.face)}`;
    yield `  ${name} ${length(across)} x ${length(up)}\n`;
    for (const lay of inside.lays) yield* layText(inside, lay, units);
  }
}

type Print = (nm: Nm) => string;

function edgeText({ meets, joint, measured }: Edge, length: Print): string {
  const trim = edgeTrim(meets);
  const met =
    meets.kind === "corner"
      ? `corner ${meets.wall} ${meets.lap}`
      : meets.kind === "outside"
        ? `outside ${meets.wall} ${meets.lap}${trim ? ` trim ${trim.name}` : ""}`
        : meets.kind === "free" && trim
          ? `free trim ${trim.name}`
          : meets.kind;
  const soft = joint
    ? `, ${joint.kind === "movement" ? "soft joint" : "joint"} ${length(joint.width)}`
    : "";
  const readings = measured.map(({ at, off }) => `${length(off)} at ${length(at)}`).join(", ");
  return met + soft + (readings ? `, measured ${readings}` : "");
}

function* layText(wall: SolvedWall, solved: SolvedLay, units: Unit): Generator<string> {
  const { lay, joint, choice } = solved;
  const length = (nm: Nm) => formatLength(nm, units);
  const { tile, bond } = lay;
  const chosen = (part: "across" | "up" | "joint") =>
    choice?.left.includes(part) ? ", chosen" : "";
  const bonding = bond.kind === "stack" ? "stack bond" : `running bond ${bond.p}/${bond.q}`;
  yield `  tile ${tile.name} ${length(tile.face.across)} x ${length(tile.face.up)}, ${bonding}\n`;
  const spacers = spacerWords(solved, units);
  yield `  joint ${exactLength(joint, units)}${chosen("joint")}${spacers ? `, ${spacers}` : ""}\n`;
  yield `  ${acrossWords(solved.across, units)}${chosen("across")}\n`;
  yield `  ${upWords(solved.up, units)}${chosen("up")}\n`;
  const { pieces, cuts, courses, smallest } = layReading(wall.wall, solved);
  yield `  ${counted(pieces, "piece")}, ${counted(cuts, "cut")}, ${counted(courses, "course")}\n`;
  if (smallest) yield `  smallest cut ${length(smallest.width)} x ${length(smallest.height)}\n`;
  yield `  courses from the bottom up\n`;
  for (let course = 0; course < courses; course++) {
    yield `    ${courseText(wall, solved, course, length)}\n`;
  }
}

/** `2 5/8 in wide | 9 whole | 2 5/8 in wide`; an opening stands where it interrupts the course. */
function courseText(wall: SolvedWall, lay: SolvedLay, course: number, length: Print): string {
  const { pieces, joint } = lay;
  const parts: string[] = [];
  let count = 0;
  let last = "";
  const flush = () => {
    if (count > 0) parts.push(several(count, last));
    count = 0;
  };
  let end: Nm | null = null;
  for (let i = pieces.courseStart[course]!; i < pieces.courseStart[course + 1]!; i++) {
    const { left, right, bottom } = pieceBounds(pieces, i);
    if (end !== null && left - end > joint) {
      flush();
      parts.push(between(wall, end, left, bottom));
    }
    const told = pieceText(lay, i, length);
    if (told !== last) flush();
    last = told;
    count++;
    end = Math.max(end ?? right, right);
  }
  flush();
  return parts.join(" | ");
}

function between({ region }: SolvedWall, from: Nm, to: Nm, bottom: Nm): string {
  const found = region.takeaways.find(
    ({ box }) => box.left < to && box.right > from && box.top > bottom,
  );
  return found ? found.opening.name : "gap";
}

function pieceText({ pieces }: SolvedLay, i: number, length: Print): string {
  const { left, right, bottom, top } = pieceBounds(pieces, i);
  const [width, height] = [length(right - left), length(top - bottom)];
  switch (cutOf(pieces, i)) {
    case "none":
      return "whole";
    case "end":
      return `${width} wide`;
    case "rip":
      return `${height} high`;
    case "corner":
      return `${width} x ${height}`;
    case "notch":
      return `L ${width} x ${height}`;
    case "slot":
      return `U ${width} x ${height}`;
    case "scribe":
      return `scribed ${width} x ${height}`;
    case "hole":
      return `${width} x ${height} with a hole`;
  }
}

/** `trim nose, bottom of sash: 3 3/4 in | 4 whole | 3 3/4 in`. */
function trimText({ along, side, pieces }: TrimRun, print: Print): string {
  const told = pieces.map(({ length, whole }) => (whole ? "whole" : print(length)));
  const runs: { what: string; count: number }[] = [];
  for (const what of told) {
    const run = runs.at(-1);
    if (run?.what === what) run.count++;
    else runs.push({ what, count: 1 });
  }
  const list = runs.map(({ what, count }) => several(count, what)).join(" | ");
  if ("edge" in along) return `trim along the ${side}: ${list}`;
  return `trim ${along.opening.frame?.trim.name ?? ""}, ${side} of ${along.opening.name}: ${list}`;
}

/** `9 whole`, `2 at 3 in wide`. */
function several(count: number, what: string): string {
  if (count === 1) return what;
  return /^\d/.test(what) ? `${count} at ${what}` : `${count} ${what}`;
}
