import { type Nm, toMillimetres } from "../../measure/index.js";
import type { Plan } from "../../model/index.js";
import {
  type LaidOption,
  optionsOf,
  type Score,
  type SolvedPlan,
  type SolvedWall,
  startedLays,
  type WallOptions,
} from "../../solver/index.js";
import { acrossJson, upJson } from "../start-json.js";
import { optionFigures } from "./option-figures.js";
import { roomJson } from "./room-json.js";
import { wholeTilesJson } from "./whole-tiles-json.js";

/** The number of the format; it goes up when a key changes its meaning or goes away. */
const SCHEMA = 1;

/**
 * The best few starts of each wall as JSON text, wall by wall, best first; and where openings and
 * holes would leave whole tiles. Lengths are millimetres, exact to the nanometre.
 */
export function* optionsJson(solved: SolvedPlan): Generator<string> {
  const { title, units } = solved.plan;
  yield `{"schema":${SCHEMA},"plan":${JSON.stringify(title)},"units":${JSON.stringify(units)},\n`;
  const room = roomJson(solved);
  if (room) yield `"room":${JSON.stringify(room)},\n`;
  yield `"walls":[`;
  for (const [i, wall] of solved.walls.entries()) {
    yield i > 0 ? ",\n" : "\n";
    yield* wallJson(solved, wall);
  }
  yield `]}\n`;
}

function* wallJson({ plan }: SolvedPlan, solved: SolvedWall): Generator<string> {
  const { name, title } = solved.wall;
  const found = startedLays(solved).map((laid) => optionsOf(plan, solved, laid)!);
  yield `{"name":${JSON.stringify(name)},"title":${JSON.stringify(title)},`;
  yield `"refused":${JSON.stringify(solved.refused)},`;
  const [first] = found;
  if (!first) {
    yield `"options":[],"wholeTiles":null}`;
    return;
  }
  yield* layJson(plan, first);
  if (solved.lays.length > 1) {
    yield `,\n"lays":[`;
    for (const [i, each] of found.entries()) {
      yield `${i > 0 ? "," : ""}\n{"name":${JSON.stringify(each.laid.lay.name)},`;
      yield* layJson(plan, each);
      yield "}";
    }
    yield "]";
  }
  yield `,\n"wholeTiles":${JSON.stringify(wholeTilesJson(solved))}}`;
}

function* layJson(plan: Plan, found: WallOptions): Generator<string> {
  const { left, weighed, capped, options } = found;
  yield `"left":${JSON.stringify(left)},"weighed":${weighed},"capped":${capped},\n"options":[`;
  for (const [i, option] of options.entries()) {
    const json = {
      ...startJson(option),
      had: option.had,
      behind: option.behind,
      score: scoreJson(option.score),
      ...figuresJson(option, optionFigures(plan, option)),
    };
    yield `${i > 0 ? "," : ""}\n${JSON.stringify(json)}`;
  }
  yield "]";
}

function startJson({ wall, lay, across, up, joint }: LaidOption): object {
  return { across: acrossJson(wall, lay, across), up: upJson(wall, lay, up), joint: mm(joint) };
}

/** In the order in which the measures decide. */
function scoreJson({ slivers, underHalf, imbalance, cuts, tiles, jointOver }: Score): object {
  return { slivers, underHalf, imbalance: mm(imbalance), cuts, tiles, jointOver: mm(jointOver) };
}

function figuresJson(
  { ends }: LaidOption,
  { smallest, cutPieces, tilesNeeded }: ReturnType<typeof optionFigures>,
): object {
  return {
    smallestCut: smallest && {
      piece: smallest.piece,
      size: [mm(smallest.width), mm(smallest.height)],
    },
    ends: {
      left: ends.left.map(mm),
      right: ends.right.map(mm),
      bottom: mm(ends.bottom),
      top: mm(ends.top),
    },
    cutPieces,
    tilesNeeded,
  };
}

function mm(nm: Nm): number {
  return toMillimetres(nm);
}
