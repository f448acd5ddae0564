import { toMillimetres as mm } from "../../measure/index.js";
import type { Diagnostic } from "../../model/index.js";
import type { SolvedInside, SolvedPlan, SolvedWall } from "../../solver/index.js";
import type { Takeoff, WallCuts } from "../../takeoff/index.js";
import { findingJson } from "../finding-json.js";
import { groundOf } from "../paper/ground.js";
import { orderOfWork } from "../paper/order-of-work.js";
import { cautionLines } from "../setting-out/cautions.js";
import { cutsJson } from "./cuts-json.js";
import { materialsJson, tileJson, trimJson } from "./purchases-json.js";
import { courseRows } from "../setting-out/course-table.js";
import { courseJson, layJson, settingOutJson } from "./wall-json.js";

/** The number of the format; it goes up when a key changes its meaning or goes away. */
const SCHEMA = 1;

/** What a sheet is made of, and what its host knows. */
export interface SheetFacts {
  readonly solved: SolvedPlan;
  readonly diagnostics: readonly Diagnostic[];
  readonly takeoff: Takeoff;
  readonly revision: string | null;
  /** How the host names a file to the reader. */
  readonly shownPath: (file: string) => string;
}

/**
 * The whole sheet as JSON text, part by part: all that the papers say, as figures (`sheet.schema.json`
 * says what each is). Lengths are millimetres, exact to the nanometre.
 */
export function* sheetJson(facts: SheetFacts): Generator<string> {
  const { solved, diagnostics, takeoff, revision, shownPath } = facts;
  const { title, units } = solved.plan;
  const head = { schema: SCHEMA, plan: title, revision, units };
  const order = orderOfWork(groundOf(solved, diagnostics, takeoff, revision));
  yield `${JSON.stringify(head).slice(0, -1)},\n"order":${JSON.stringify(order)},\n`;
  yield `"cautions":${JSON.stringify(cautionLines(solved))},\n"walls":[`;
  yield* listed(solved.walls, (wall, i) => JSON.stringify(wallJson(facts, wall, i)));
  yield `],\n"tiles":[`;
  yield* listed(takeoff.tiles, tileJson);
  yield `],\n"trims":[`;
  yield* listed(takeoff.trims, trimJson);
  yield `],\n"materials":${materialsJson(solved.plan, takeoff)},\n"saw":${sawJson(takeoff)},\n`;
  yield `"diagnostics":[`;
  yield* listed(diagnostics, (found) => JSON.stringify(findingJson(found, shownPath)));
  yield `]}\n`;
}

function wallJson({ solved, takeoff }: SheetFacts, wall: SolvedWall, i: number): object {
  const { refused } = wall;
  const { name, title, size } = wall.wall;
  const cuts = takeoff.walls[i]!;
  const insides = wall.insides.map((inside, k) => insideJson(takeoff, inside, cuts.insides[k]!));
  return {
    name,
    title,
    mark: cuts.mark,
    size: [mm(size.across), mm(size.up)],
    refused: refused && { pieces: refused.pieces, most: refused.most },
    ...settingOutJson(solved, wall),
    ...cutsJson(cuts),
    softJoints: softJointsJson(takeoff, name),
    ...(insides.length > 0 ? { insides } : {}),
  };
}

/** A surface inside an opening, as it is folded out. */
function insideJson(takeoff: Takeoff, inside: SolvedInside, cuts: WallCuts): object {
  const { name, size } = inside.wall;
  return {
    name,
    opening: inside.opening.name,
    face: inside.face,
    mark: cuts.mark,
    size: [mm(size.across), mm(size.up)],
    lays: inside.lays.map(layJson),
    courses: inside.lays.flatMap(courseRows).map(courseJson),
    ...cutsJson(cuts),
    softJoints: softJointsJson(takeoff, name),
  };
}

function softJointsJson({ materials }: Takeoff, wall: string): object[] {
  return materials.sealant
    .filter((joint) => joint.wall === wall)
    .map(({ along, length, width, depth, volume }) => ({
      along,
      length: mm(length),
      width: mm(width),
      depth: mm(depth),
      volume,
    }));
}

function sawJson({ saw }: Takeoff): string {
  const { passes, holes, mitres, mitredEdges, mitreLength, kerf, kerfStated } = saw;
  return JSON.stringify({
    ...{ passes, holes, mitres, mitredEdges, mitreLength: mm(mitreLength) },
    ...{ kerf: mm(kerf), kerfStated },
  });
}

function* listed<T>(items: readonly T[], text: (item: T, i: number) => string): Generator<string> {
  for (const [i, item] of items.entries()) yield `${i > 0 ? ",\n" : "\n"}${text(item, i)}`;
}
