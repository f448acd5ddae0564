import { type Diagnostic, type Opening, OPENING_KINDS } from "../model/index.js";
import { check } from "../rules/index.js";
import { layReading } from "../sheets/index.js";
import type { SolvedPlan, SolvedWall } from "../solver/index.js";
import { mitredEdges } from "../takeoff/index.js";
import { alignmentChanges, alignmentsOf, type CommonName, OWN_NAMES } from "./alignments.js";
import type {
  Alignment,
  Change,
  ComparedPlan,
  Comparison,
  Fact,
  Pair,
  WallComparison,
  WallReading,
} from "./comparison.js";
import { findingChanges } from "./finding-changes.js";
import { layFacts } from "./lay-facts.js";
import { matchPieces } from "./match-pieces.js";
import { matchHoles, matchOpenings, matchPlans } from "./match-plan.js";
import { holeFacts, openingFacts } from "./opening-facts.js";
import { pieceChanges } from "./piece-changes.js";
import { partChanges, planFacts, tileFacts, trimFacts } from "./plan-facts.js";
import { setCoursesCut } from "./set-courses.js";
import { quantitiesOf } from "./quantities.js";
import { softFacts } from "./soft-facts.js";
import { wallFacts } from "./wall-facts.js";

/**
 * What differs between two plans, piece by piece: pieces are recognised by their place in the course
 * and courses by their place up the wall, so that a shifted wall is moved, not new. The way back is
 * the same comparison with before and after exchanged.
 */
export function compare(before: ComparedPlan, after: ComparedPlan): Comparison {
  const [old, now] = [before.solved, after.solved];
  const { walls, tiles, trims } = matchPlans(old, now);
  const plans = { before: old, after: now };
  const renamedWalls = renames(walls.map(wallNames));
  const renamedTiles = renames(tiles);
  const openings = walls.flatMap((wall) =>
    wall.before && wall.after
      ? [
          ...matchOpenings(wall.before.wall.openings, wall.after.wall.openings),
          ...matchHoles(wall.before.wall.holes, wall.after.wall.holes),
        ]
      : [],
  );
  const renamed = new Map([
    ...renamedWalls,
    ...renamedTiles,
    ...renames(trims),
    ...renames(openings),
  ]);
  const common = { before: nameIn(renamed), after: OWN_NAMES };
  let quantities: Comparison["quantities"] | null = null;
  return {
    units: { before: old.plan.units, after: now.plan.units },
    title: { before: old.plan.title, after: now.plan.title },
    parts: [...partChanges("tile", tiles), ...partChanges("trim", trims)],
    facts: [
      ...planFacts(old.plan, now.plan),
      ...tiles.flatMap(tileFacts),
      ...trims.flatMap(trimFacts),
    ],
    walls: walls.map((wall) => compareWall(wall, plans, { common, renamedWalls, renamedTiles })),
    findings: findingChanges(findingsIn(before, after), after.diagnostics, common),
    get quantities() {
      return (quantities ??= quantitiesOf(old, now, tiles, trims));
    },
  };
}

interface Names {
  readonly common: { readonly before: CommonName; readonly after: CommonName };
  readonly renamedWalls: ReadonlyMap<string, string>;
  readonly renamedTiles: ReadonlyMap<string, string>;
}

function compareWall(
  wall: Change<SolvedWall>,
  plans: Pair<SolvedPlan>,
  { common, renamedWalls, renamedTiles }: Names,
): WallComparison {
  const { before, after } = wall;
  const matches = matchPieces(wall);
  const shift = matches[0]?.shift ?? null;
  const openings = matchOpenings(before?.wall.openings ?? [], after?.wall.openings ?? []);
  const holes = matchHoles(before?.wall.holes ?? [], after?.wall.holes ?? []);
  const both = before && after;
  return {
    name: wallNames(wall).names,
    title: { before: before?.wall.title ?? null, after: after?.wall.title ?? null },
    parts: both
      ? [
          ...OPENING_KINDS.flatMap((kind) =>
            partChanges(
              kind,
              openings.filter((each) => (each.after ?? each.before)!.kind === kind),
            ),
          ),
          ...partChanges("hole", holes),
        ]
      : [],
    facts: both
      ? [
          ...withoutTwins(
            matches.flatMap((match) => layFacts(match, plans.after.plan.units, renamedTiles)),
          ),
          ...softFacts({ before, after }, plans.after.plan.units, renamedTiles),
          ...openings.flatMap(openingFacts),
          ...holes.flatMap(holeFacts),
          ...wallFacts(before.wall, after.wall, renamedWalls),
        ]
      : [],
    shift: shift && [shift.up, ...shift.across].some((by) => by !== 0) ? shift : null,
    anew: matches.length > 0 && matches.every(({ anew }) => anew),
    pieces: pieceChanges(matches),
    onWall: setCoursesCut(matches),
    reading: { before: readingOf(before), after: readingOf(after) },
    alignments: both
      ? alignmentChanges(
          alignmentsOf(plans.before, before).filter(isOfBoth(openings, "before")),
          alignmentsOf(plans.after, after).filter(isOfBoth(openings, "after")),
          commonWords(common),
        )
      : [],
  };
}

/** What is set of a lay and what is over it may have changed alike: that is told once. */
function withoutTwins(facts: readonly Fact[]): Fact[] {
  return [...new Map(facts.map((fact) => [JSON.stringify(fact), fact])).values()];
}

/** What a new or gone opening is in line with says nothing about a change. */
function isOfBoth(openings: readonly Change<Opening>[], when: "before" | "after") {
  const alone = new Set(
    openings.flatMap((each) => {
      const own = each[when];
      return own && !(each.before && each.after) ? [`${own.kind} ${own.name}`] : [];
    }),
  );
  return (alignment: Alignment): boolean => {
    if (alignment.kind === "opening on a joint") return !alone.has(alignment.opening);
    return alignment.kind !== "centred" || !alone.has(alignment.on);
  };
}

function readingOf(wall: SolvedWall | null): WallReading | null {
  if (!wall || wall.lays.length === 0) return null;
  const all = wall.lays.map((lay) => layReading(wall.wall, lay));
  const sum = (part: "courses" | "pieces" | "cuts") =>
    all.reduce((total, reading) => total + reading[part], 0);
  const sizes = all.flatMap(({ smallest }) => smallest ?? []);
  const [least] = sizes.sort((a, b) => Math.min(a.width, a.height) - Math.min(b.width, b.height));
  const smallest = least ? { width: least.width, height: least.height } : null;
  const { count: mitred } = mitredEdges(wall);
  return { courses: sum("courses"), pieces: sum("pieces"), cuts: sum("cuts"), mitred, smallest };
}

type Named = Change<{ readonly name: string }>;

function wallNames({ before, after }: Change<SolvedWall>) {
  const names = { before: before?.wall.name ?? null, after: after?.wall.name ?? null };
  return { names, before: before?.wall ?? null, after: after?.wall ?? null };
}

/** Old names to new ones, of those parts that were renamed. */
function renames(changes: readonly Named[]): ReadonlyMap<string, string> {
  return new Map(
    changes.flatMap(({ before, after }) =>
      before && after && before.name !== after.name ? [[before.name, after.name] as const] : [],
    ),
  );
}

function nameIn(renamed: ReadonlyMap<string, string>): CommonName {
  return renamed.size === 0 ? OWN_NAMES : (name) => renamed.get(name) ?? name;
}

/** The same, for names that have their kind before them: `window sash`. */
function commonWords({ before, after }: Names["common"]): Names["common"] {
  const each = (common: CommonName) => (words: string) => words.split(" ").map(common).join(" ");
  return { before: each(before), after: each(after) };
}

/** What was found before, told in the units of the plan after, so that figures can be compared. */
function findingsIn(
  { solved, diagnostics }: ComparedPlan,
  after: ComparedPlan,
): readonly Diagnostic[] {
  const { units } = after.solved.plan;
  if (solved.plan.units === units) return diagnostics;
  const rules = new Set(check(solved).map(identity));
  const others = diagnostics.filter((found) => !rules.has(identity(found)));
  return [...others, ...check({ ...solved, plan: { ...solved.plan, units } })];
}

function identity({ code, message, range }: Diagnostic): string {
  return JSON.stringify([code, message, range]);
}
