import type { Unit } from "../measure/index.js";
import type { Bond } from "../model/index.js";
import { setName } from "../rules/index.js";
import type { PieceMatch } from "./match-pieces.js";
import { acrossWords, toldLength, upWords } from "../sheets/index.js";
import {
  courseShift,
  type Lattice,
  moduleAcross,
  moduleUp,
  type SolvedLay,
} from "../solver/index.js";
import type { Fact } from "./comparison.js";
import { factOf, length, words } from "./facts-of.js";

/**
 * What changed of how a wall is laid. A start that is written otherwise and leads to the same grid
 * is no change; nor is one that stays written while the wall changes round it.
 */
export function layFacts(
  { lays: { before, after }, lowest }: Pick<PieceMatch, "lays" | "lowest">,
  units: Unit,
  renamedTiles: ReadonlyMap<string, string>,
): Fact[] {
  const of = { of: "lay" } as const;
  if (!before || !after) {
    return factOf(
      of,
      "tile",
      words(before?.lay.tile.name ?? null),
      words(after?.lay.tile.name ?? null),
    );
  }
  const [old, now] = [before.lattice, after.lattice];
  const [tile, other] = [before.lay.tile.name, after.lay.tile.name];
  const starts = (part: "across" | "up") => startsOf(before, after, part, units);
  const sameTile = (renamedTiles.get(tile) ?? tile) === other;
  return [
    // What goes on over set courses has no start of its own.
    ...(!lowest || sameAcross(old, now) ? [] : factOf(of, "across", ...starts("across"))),
    ...(!lowest || isSameUp(before, after) ? [] : factOf(of, "up", ...starts("up"))),
    ...(sameTile ? [] : factOf(of, "tile", words(tile), words(other))),
    ...factOf(of, "bond", words(bondName(before.lay.bond)), words(bondName(after.lay.bond))),
    ...factOf(of, "joint", length(before.joint), length(after.joint)),
    ...setFacts(before, after),
  ];
}

/** What is set, and where its top was measured. */
function setFacts(before: SolvedLay, after: SolvedLay): Fact[] {
  const of = { of: "lay" } as const;
  const top = ({ lay, stand }: SolvedLay) =>
    lay.set && lay.set.tops.length > 0 && stand!.reached ? length(stand!.top) : null;
  return [
    ...factOf(of, "set", words(setName(before)), words(setName(after))),
    ...factOf(of, "set top", top(before), top(after)),
  ];
}

/** Set courses keep their start, whatever their top is off. */
function isSameUp(before: SolvedLay, after: SolvedLay): boolean {
  if (before.stand || after.stand) return before.courses[0]?.bottom === after.courses[0]?.bottom;
  return sameUp(before.lattice, after.lattice);
}

/** Both starts as people are told them, or to the nanometre where that would make them alike. */
function startsOf(before: SolvedLay, after: SolvedLay, part: "across" | "up", units: Unit) {
  const told = (lay: SolvedLay, length?: typeof toldLength) =>
    part === "across" ? acrossWords(lay.across, units, length) : upWords(lay.up, units, length);
  const length = told(before, toldLength) === told(after, toldLength) ? undefined : toldLength;
  return [words(told(before, length)), words(told(after, length))] as const;
}

function bondName(bond: Bond): string {
  return bond.kind === "stack" ? "stack" : `running ${bond.p}/${bond.q}`;
}

function sameUp(a: Lattice, b: Lattice): boolean {
  return moduleUp(a) === moduleUp(b) && (a.y - b.y) % moduleUp(a) === 0;
}

/** Whether the lowest course's tiles and those over it stand at the same places across. */
function sameAcross(a: Lattice, b: Lattice): boolean {
  const module = moduleAcross(a);
  return (
    module === moduleAcross(b) &&
    (a.x - b.x) % module === 0 &&
    courseShift(a, 2) === courseShift(b, 2)
  );
}
