import {
  edgeTrim,
  type Hole,
  INSIDE_FACES,
  type Opening,
  type Tile,
  type Trim,
} from "../model/index.js";
import { type SolvedPlan, type SolvedWall, surfacesOf } from "../solver/index.js";
import type { Change } from "./comparison.js";
import { matchParts, type Traits } from "./match-parts.js";

/** The walls, tiles and trims of two plans, each beside itself. */
export interface PlanMatch {
  /** Each wall, and after it the surfaces inside its openings. */
  readonly walls: readonly Change<SolvedWall>[];
  /** Only those that are set on a wall: a stock list's others are nobody's change. */
  readonly tiles: readonly Change<Tile>[];
  readonly trims: readonly Change<Trim>[];
}

export function matchPlans(before: SolvedPlan, after: SolvedPlan): PlanMatch {
  return {
    walls: changes(before.walls, after.walls, WALLS).flatMap((wall) => [wall, ...insidesOf(wall)]),
    tiles: changes(tilesSet(before), tilesSet(after), TILES),
    trims: changes(trimsSet(before), trimsSet(after), TRIMS),
  };
}

/** The surfaces inside a wall's openings, by opening and face; a renamed opening keeps its own. */
function insidesOf({ before, after }: Change<SolvedWall>): Change<SolvedWall>[] {
  const openings = matchOpenings(before?.wall.openings ?? [], after?.wall.openings ?? []);
  return openings.flatMap((opening) =>
    INSIDE_FACES.flatMap((face): Change<SolvedWall>[] => {
      const of = (wall: SolvedWall | null, own: Opening | null): SolvedWall | null =>
        wall?.insides.find((each) => each.opening === own && each.face === face) ?? null;
      const [old, now] = [of(before, opening.before), of(after, opening.after)];
      return old || now ? [{ before: old, after: now }] : [];
    }),
  );
}

export function matchOpenings(
  before: readonly Opening[],
  after: readonly Opening[],
): readonly Change<Opening>[] {
  return changes(before, after, OPENINGS);
}

export function matchHoles(
  before: readonly Hole[],
  after: readonly Hole[],
): readonly Change<Hole>[] {
  return changes(before, after, HOLES);
}

function changes<T>(
  before: readonly T[],
  after: readonly T[],
  traits: Traits<T>,
): readonly Change<T>[] {
  return matchParts(before, after, traits).map((match) => ({
    before: before[match.before] ?? null,
    after: after[match.after] ?? null,
  }));
}

/** A renamed wall keeps its title or its size, and most of what is on it. */
const WALLS: Traits<SolvedWall> = {
  nameOf: ({ wall }) => wall.name,
  likeness: ({ wall: a }, { wall: b }) =>
    count([
      a.title !== "" && a.title === b.title,
      a.size.across === b.size.across,
      a.size.up === b.size.up,
      sameList(a.lays, b.lays, ({ tile }) => tile.name),
      a.openings.length > 0 && sameList(a.openings, b.openings, (opening) => opening.name),
      a.holes.length > 0 && sameList(a.holes, b.holes, (hole) => hole.name),
      sameList(Object.values(a.edges), Object.values(b.edges), (edge) => edge.meets.kind),
    ]),
  enough: 4,
};

/** A renamed tile keeps its face, and its title or its thickness. */
const TILES: Traits<Tile> = {
  nameOf: (tile) => tile.name,
  likeness: (a, b) =>
    (a.face.across === b.face.across && a.face.up === b.face.up ? 2 : 0) +
    count([a.title !== "" && a.title === b.title, a.thickness === b.thickness, a.box === b.box]),
  enough: 4,
};

const TRIMS: Traits<Trim> = {
  nameOf: (trim) => trim.name,
  likeness: (a, b) =>
    (a.face.along === b.face.along && a.face.across === b.face.across ? 2 : 0) +
    count([a.title !== "" && a.title === b.title, a.thickness === b.thickness]),
  enough: 3,
};

/** A renamed opening keeps its kind, and its place or its size. */
const OPENINGS: Traits<Opening> = {
  nameOf: ({ kind, name }) => `${kind} ${name}`,
  likeness: (a, b) =>
    a.kind !== b.kind
      ? 0
      : count([
          a.at.x === b.at.x,
          a.at.y === b.at.y,
          a.size.across === b.size.across,
          a.size.up === b.size.up,
        ]),
  enough: 2,
};

const HOLES: Traits<Hole> = {
  nameOf: (hole) => hole.name,
  likeness: (a, b) => count([a.at.x === b.at.x && a.at.y === b.at.y, a.across === b.across]),
  enough: 1,
};

function count(facts: readonly boolean[]): number {
  return facts.filter(Boolean).length;
}

function sameList<T>(a: readonly T[], b: readonly T[], told: (item: T) => string): boolean {
  return a.length === b.length && a.every((item, i) => told(item) === told(b[i]!));
}

function tilesSet({ walls }: SolvedPlan): readonly Tile[] {
  return byName(surfacesOf(walls).flatMap(({ lays }) => lays.map(({ lay }) => lay.tile)));
}

function trimsSet({ walls }: SolvedPlan): readonly Trim[] {
  return byName(
    walls.flatMap(({ wall }) => [
      ...wall.openings.flatMap(({ frame }) => (frame ? [frame.trim] : [])),
      ...Object.values(wall.edges).flatMap(({ meets }) => edgeTrim(meets) ?? []),
    ]),
  );
}

function byName<T extends { readonly name: string }>(parts: readonly T[]): readonly T[] {
  return [...new Map(parts.map((part) => [part.name, part])).values()];
}
