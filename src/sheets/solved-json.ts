import { type Nm, toMillimetres } from "../measure/index.js";
import type { Bond, Diagnostic, Hole, Plan, SetCourses } from "../model/index.js";
import {
  cutOf,
  doublePieceArea,
  doubleShapeArea,
  isSetCourse,
  measureRoom,
  pieceId,
  pieceShape,
  type Choice,
  type Option,
  type Ring,
  type Score,
  type SolvedInside,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
  type TrimRun,
  visibleShapes,
} from "../solver/index.js";
import { squareMillimetres } from "./area.js";
import { wishJson } from "./options/room-json.js";
import { findingJson } from "./finding-json.js";
import { plateJson } from "./plate-json.js";
import { softJson } from "./soft-json.js";
import { acrossJson, upJson } from "./start-json.js";

/** The number of the format; it goes up when a key changes its meaning or goes away. */
const SCHEMA = 1;

/**
 * The solved plan as JSON text, part by part, so that a large one need never stand in memory whole.
 * Lengths are millimetres, exact to the nanometre; areas are square millimetres, exact. One piece,
 * course or finding a line. `shownPath` is how the host names a file to the reader.
 */
export function* solvedJson(
  solved: SolvedPlan,
  diagnostics: readonly Diagnostic[],
  shownPath: (file: string) => string,
): Generator<string> {
  const { title, units } = solved.plan;
  yield `{"schema":${SCHEMA},"plan":${JSON.stringify(title)},"units":${JSON.stringify(units)},\n`;
  if (solved.room) yield `"wishes":${JSON.stringify(wishesJson(solved, solved.room.asked))},\n`;
  yield `"walls":[`;
  yield* separated(solved.walls, wallJson);
  yield `],\n"diagnostics":[`;
  yield* separated(diagnostics, function* (found) {
    yield JSON.stringify(findingJson(found, shownPath));
  });
  yield `]}\n`;
}

/** What the plan's layout misses of each wish, the most wanted first. */
function wishesJson({ plan, walls }: SolvedPlan, { wishes, units }: Plan): object[] {
  const { misses } = measureRoom(plan, walls, wishes);
  return wishes.map((wish, i) => wishJson(wish, misses[i]!, units));
}

function* wallJson(solved: SolvedWall): Generator<string> {
  const { wall, refused } = solved;
  const size = JSON.stringify([mm(wall.size.across), mm(wall.size.up)]);
  yield `{"name":${JSON.stringify(wall.name)},"title":${JSON.stringify(wall.title)},"size":${size},\n`;
  if (wall.outline) {
    const corners = wall.outline.map(({ x, y }) => [mm(x), mm(y)]);
    yield `"outline":${JSON.stringify(corners)},\n`;
  }
  if (wall.legs.length > 0) {
    const legs = wall.legs.map(({ side, across, down }) => ({
      side,
      across: mm(across),
      down: mm(down),
    }));
    yield `"legs":${JSON.stringify(legs)},\n`;
  }
  if (wall.holes.length > 0) yield `"holes":${JSON.stringify(wall.holes.map(holeJson))},\n`;
  yield `"refused":${JSON.stringify(refused)},\n"lays":[`;
  yield* separated(solved.lays, (lay) => layJson(solved, lay));
  yield `],\n"trims":[`;
  yield* separated(solved.trims, function* (run) {
    yield JSON.stringify(trimJson(run));
  });
  yield `]`;
  const soft = softJson(solved);
  if (soft.length > 0) yield `,\n"softJoints":${JSON.stringify(soft)}`;
  if (solved.insides.length > 0) {
    yield `,\n"insides":[`;
    yield* separated(solved.insides, insideJson);
    yield `]`;
  }
  yield `}`;
}

/** A surface inside an opening: x and y run from its own lower left corner, as it is folded out. */
function* insideJson(solved: SolvedInside): Generator<string> {
  const { wall, opening, face } = solved;
  const head = {
    name: wall.name,
    opening: opening.name,
    face,
    size: [mm(wall.size.across), mm(wall.size.up)],
  };
  yield `${JSON.stringify(head).slice(0, -1)},\n"lays":[`;
  yield* separated(solved.lays, (lay) => layJson(solved, lay));
  yield `]}`;
}

/** What is cut out of the tile there, and the plate that is to cover it. */
function holeJson({ name, at, across, plate }: Hole): object {
  const covered = plate ? { plate: plateJson(plate) } : {};
  return { name, at: [mm(at.x), mm(at.y)], across: mm(across), ...covered };
}

function* layJson(wall: SolvedWall, solved: SolvedLay): Generator<string> {
  const { lay, joint, courses, choice, below } = solved;
  yield `{"name":${JSON.stringify(lay.name)},"tile":${JSON.stringify(lay.tile.name)},"bond":${JSON.stringify(bondName(lay.bond))},`;
  yield `"joint":${mm(joint)},\n`;
  yield `"across":${JSON.stringify(acrossJson(wall, solved, solved.across))},`;
  yield `"up":${JSON.stringify(upJson(wall, solved, solved.up))},\n`;
  if (lay.set) yield `"set":${JSON.stringify(setJson(solved, lay.set))},\n`;
  yield `"choice":${JSON.stringify(choice && choiceJson(wall, solved, choice))},\n"courses":[`;
  yield* separated(courses, function* ({ number, bottom, top }) {
    yield JSON.stringify({ number: below + number, bottom: mm(bottom), top: mm(top) });
  });
  yield `],\n"pieces":[`;
  yield* piecesJson(solved);
  yield `]}`;
}

/** Which courses are set, as they are counted on the wall, and where their top was planned and is. */
function setJson({ below, stand }: SolvedLay, { from, to, tops }: SetCourses): object {
  return {
    courses: [below + from, below + to],
    planned: mm(stand!.planned),
    top: mm(stand!.top),
    reached: stand!.reached,
    measured: tops.map(({ at, y }) => ({ at: at === null ? null : mm(at), y: mm(y) })),
  };
}

function* piecesJson(solved: SolvedLay): Generator<string> {
  const { pieces, below } = solved;
  for (let i = 0; i < pieces.count; i++) {
    const { outline, holes } = pieceShape(pieces, i);
    const area = doublePieceArea(pieces, i);
    const seen = pieces.visible.has(i)
      ? visibleShapes(pieces, i).reduce((sum, shape) => sum + doubleShapeArea(shape), 0n)
      : area;
    yield (
      `${i > 0 ? "," : ""}\n{"id":${JSON.stringify(pieceId(solved, i))},` +
      `"course":${below + pieces.course[i]!},"column":${pieces.column[i]!},"cut":"${cutOf(pieces, i)}",` +
      `"outline":${ringText(outline)},"holes":[${holes.map(ringText).join(",")}],` +
      `"area":${squareMillimetres(area)},"hidden":${squareMillimetres(area - seen)}` +
      `${isSetCourse(solved, pieces.course[i]!) ? ',"set":true' : ""}}`
    );
  }
}

/** What was left to the solver, what it chose, and the next best, each with its numbers. */
function choiceJson(wall: SolvedWall, solved: SolvedLay, choice: Choice): object {
  const option = ({ across, up, joint, score }: Option): object => ({
    across: acrossJson(wall, solved, across),
    up: upJson(wall, { ...solved, joint }, up),
    joint: mm(joint),
    score: scoreJson(score),
  });
  const { left, weighed, capped, decidedBy, chosen, others } = choice;
  return {
    left,
    weighed,
    capped,
    decidedBy,
    chosen: option(chosen),
    others: others.map(option),
  };
}

/** In the order in which the measures decide. */
function scoreJson({ slivers, underHalf, imbalance, cuts, tiles, jointOver }: Score): object {
  return { slivers, underHalf, imbalance: mm(imbalance), cuts, tiles, jointOver: mm(jointOver) };
}

function trimJson({ along, side, pieces }: TrimRun): object {
  return {
    ...("opening" in along ? { opening: along.opening.name } : { edge: along.edge.side }),
    side,
    pieces: pieces.map(({ shape, length, mitre, whole }) => ({
      outline: points(shape.outline),
      length: mm(length),
      mitre,
      whole,
    })),
  };
}

function bondName(bond: Bond): string {
  return bond.kind === "stack" ? "stack" : `running ${bond.p}/${bond.q}`;
}

function mm(nm: Nm): number {
  return toMillimetres(nm);
}

function points(ring: Ring): readonly (readonly [number, number])[] {
  const list: [number, number][] = [];
  for (let i = 0; i < ring.length; i += 2) list.push([mm(ring[i]!), mm(ring[i + 1]!)]);
  return list;
}

function ringText(ring: Ring): string {
  let text = "";
  for (let i = 0; i < ring.length; i += 2) {
    text += `${i > 0 ? "," : ""}[${mm(ring[i]!)},${mm(ring[i + 1]!)}]`;
  }
  return `[${text}]`;
}

/** The parts of each item, with a comma and a new line between items. */
function* separated<T>(
  items: readonly T[],
  parts: (item: T) => Iterable<string>,
): Generator<string> {
  for (const [i, item] of items.entries()) {
    yield i > 0 ? ",\n" : "\n";
    yield* parts(item);
  }
}
