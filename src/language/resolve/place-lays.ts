import type { Lay, LayArea, Side } from "../../model/index.js";
import type { LayPart, LayStatement, SetStatement } from "../syntax.js";
import { didYouMean } from "../nearest.js";
import { resolveArea } from "./lay-area.js";
import { courseRuns, type Run } from "./lay-courses.js";
import type { Parts } from "./parts.js";
import { resolveSet, type SetStretch } from "./set-courses.js";
import { partsOf, type RunPart } from "./set-parts.js";
import type { WallDraft } from "./wall-draft.js";

/** A lay without its place among the others of its wall. */
export type PlainLay = Omit<Lay, "name" | "area" | "goesOnFrom" | "set">;

/** A lay's statement, and what it says but for its place. */
export interface ReadLay {
  readonly statement: LayStatement;
  readonly parts: Parts<LayPart>;
  readonly lay: PlainLay;
  /** What of it is set already. */
  readonly set: readonly SetStatement[];
}

interface Placing extends ReadLay {
  readonly runs: readonly Run[];
  /** Its runs, parted where what is set ends, the lowest first. */
  readonly pieces: readonly RunPart[];
  /** The names of these parts. */
  readonly names: readonly string[];
}

/**
 * The lays of a wall with their names and places. A list of courses becomes lays that stand on each
 * other. At most one lay may have what the others leave; a second one is told and left out.
 */
export function placeLays(read: readonly ReadLay[], draft: WallDraft): Lay[] {
  const taken = new Set<string>();
  const placing = read.map((each): Placing => {
    const { lay, parts } = each;
    const runs = courseRuns(parts.first("lay-courses"), lay, draft);
    const pieces = partsOf(runs, setStretches(each, runs, draft));
    return { ...each, runs, pieces, names: namesOf(pieces, taken) };
  });
  const placed = placing.flatMap((each) => placeOne(each, placing, draft));
  return withoutCircles(withOneRest(placed, draft), draft);
}

interface PlacedLay {
  readonly statement: LayStatement;
  readonly lay: Lay;
}

/** What is over set courses of the same run is called after them, so that other lays keep their names. */
function namesOf(pieces: readonly RunPart[], taken: Set<string>): string[] {
  let run = "";
  return pieces.map(({ tile, over }) => {
    if (over > 0) return `${run} over course ${over}`;
    return (run = nameFor(tile.name, taken));
  });
}

function nameFor(tile: string, taken: Set<string>): string {
  let name = tile;
  for (let n = 2; taken.has(name); n++) name = `${tile}-${n}`;
  taken.add(name);
  return name;
}

function placeOne(each: Placing, all: readonly Placing[], draft: WallDraft): PlacedLay[] {
  const { statement, lay, parts, runs, pieces, names } = each;
  const own = resolveArea(parts, draft);
  const beside = resolveBeside(each, all, draft);
  const placed = { ...own.bounds, ...beside };
  // What a list leaves over it has only above its last run.
  const hasOneRun = runs.length === 1;
  const isRest = hasOneRun && runs[0]!.courses === null && Object.keys(placed).length === 0;
  const saysNothing = isRest && pieces.length === 1 && own.joint === null;
  return pieces.map(({ tile, courses, set, joint }, i) => {
    const bounds = i === 0 ? { ...placed } : { ...placed, bottom: layBound(names[i - 1]!) };
    if (i < pieces.length - 1 && !hasOneRun) delete bounds.top;
    const area: LayArea | null = saysNothing
      ? null
      : { bounds, courses, joint: own.joint, rest: isRest };
    const stands = bounds.bottom?.kind === "lay" || courses !== null;
    const up = i > 0 ? FROM_BOTTOM : (lay.up ?? (stands ? FROM_BOTTOM : null));
    const goesOnFrom = lastWith(pieces, i, names);
    const width = joint === null ? lay.joint : { min: joint, max: joint, origin: set!.origin };
    return {
      statement,
      lay: { ...lay, tile, up, joint: width, name: names[i]!, area, goesOnFrom, set },
    };
  });
}

const FROM_BOTTOM = { kind: "full-course", from: "bottom" } as const;

function layBound(lay: string): { readonly kind: "lay"; readonly lay: string } {
  return { kind: "lay", lay };
}

/** The nearest run below that has the same tile. */
function lastWith(runs: readonly Run[], i: number, names: readonly string[]): string | null {
  for (let k = i - 1; k >= 0; k--) if (runs[k]!.tile === runs[i]!.tile) return names[k]!;
  return null;
}

/** What of a lay is set; nothing, which is told, where the plan leaves open how it was set. */
function setStretches(
  { lay, parts, set }: ReadLay,
  runs: readonly Run[],
  draft: WallDraft,
): readonly SetStretch[] {
  const stretches = resolveSet(set, draft);
  const stands = parts.first("lay-beside")?.relation === "over" || runs[0]!.courses !== null;
  const leavesJoint = lay.joint.min < lay.joint.max;
  const open = [
    ...(lay.across ? [] : ["`across`"]),
    ...(lay.up || stands ? [] : ["`up`"]),
    ...(leavesJoint && stretches.some(({ joint }) => joint === null) ? ["the joint"] : []),
  ];
  const [first] = stretches;
  if (!first || open.length === 0) return stretches;
  const message =
    `found courses ${first.from} to ${stretches.at(-1)!.to} set where the plan leaves ${open.join(", ")} to the solver, ` +
    "wanted it written down as they were set";
  draft.scope.report.tellAt("plan/set-open", first.origin, message, { wall: draft.name });
  return [];
}

/** The lay that this one stands on (its topmost run), or hangs under (its lowest one). */
function resolveBeside(
  { parts, names }: Placing,
  all: readonly Placing[],
  { scope, name: wall }: WallDraft,
): Partial<LayArea["bounds"]> {
  const statement = parts.first("lay-beside");
  if (!statement) return {};
  const { relation, lay } = statement;
  const other = all.find((each) => each.names.includes(lay.text));
  if (other && !names.includes(lay.text)) {
    const end = relation === "over" ? other.names.at(-1)! : other.names[0]!;
    const side: Side = relation === "over" ? "bottom" : "top";
    return { [side]: layBound(end) };
  }
  const known = all.flatMap((each) => (names === each.names ? [] : each.names));
  const message = other
    ? `found the lay \`${lay.text}\` itself, wanted another lay of this wall`
    : `found no lay called \`${lay.text}\` in this wall${didYouMean(lay.text, known)}`;
  scope.report.tell("plan/name-unknown", lay, message, { wall });
  return {};
}

function withOneRest(placed: readonly PlacedLay[], { scope, name: wall }: WallDraft): PlacedLay[] {
  const isRest = ({ lay: { area } }: PlacedLay): boolean => area === null || area.rest;
  const first = placed.find(isRest);
  return placed.filter((each) => {
    const { statement } = each;
    if (!isRest(each) || statement === first!.statement) return true;
    const related = [scope.report.place(first!.statement.head, "the first one")];
    const message =
      "found a second `lay` that has the rest of the wall, wanted `covers`, `over`, `under`, " +
      "`courses`, or `at` and `size` in one of them";
    scope.report.tell("plan/lay-twice", statement.head, message, { wall, related });
    return false;
  });
}

/** Lays that stand on each other in a circle stand on nothing: the first of them is told, and stands by itself. */
function withoutCircles(placed: readonly PlacedLay[], { scope, name: wall }: WallDraft): Lay[] {
  const byName = new Map(placed.map(({ lay }) => [lay.name, lay]));
  for (const { statement, lay } of placed) {
    if (!leadsTo(lay.name, byName)) continue;
    const { bounds } = lay.area!;
    const kept = Object.entries(bounds).filter(([, bound]) => bound.kind !== "lay");
    byName.set(lay.name, { ...lay, area: { ...lay.area!, bounds: Object.fromEntries(kept) } });
    const message = `found lays that stand on each other in a circle, wanted one that \`${lay.name}\` stands on by itself`;
    scope.report.tell("plan/lay-circle", statement.head, message, { wall });
  }
  return placed.map(({ lay }) => byName.get(lay.name)!);
}

function leadsTo(name: string, lays: ReadonlyMap<string, Lay>): boolean {
  const seen = new Set<string>();
  const waiting = [name];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    for (const bound of Object.values(lays.get(next)?.area?.bounds ?? {})) {
      if (bound.kind !== "lay" || seen.has(bound.lay)) continue;
      if (bound.lay === name) return true;
      seen.add(bound.lay);
      waiting.push(bound.lay);
    }
  }
  return false;
}
