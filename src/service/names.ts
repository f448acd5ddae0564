import type { Syntax } from "../language/index.js";
import { expressionsOf, leavesOf, statementsOf } from "./walk-tree.js";

export type NameKind = "let" | "tile" | "trim" | "wall" | "opening" | "hole";

/** A name where it is given or used. */
export interface NamePlace {
  readonly kind: NameKind;
  readonly word: Syntax.Word;
  readonly declares: boolean;
  /** The wall in which an opening's or a hole's name holds; null for names of the whole file. */
  readonly wall: string | null;
}

/** Every name of a text, in its order. Names inside lines that can't be understood are not known. */
export function namesOf(tree: Syntax.SyntaxTree): NamePlace[] {
  const places: NamePlace[] = [];
  const wallOf = openingWalls(tree);
  for (const { statement, blocks } of statementsOf(tree.statements)) {
    const [outer] = blocks;
    const wall = outer?.kind === "wall" ? (outer.name?.text ?? `wall at ${outer.start}`) : null;
    const add = (kind: NameKind, word: Syntax.Word | null, declares: boolean): void => {
      const isOfWall = kind === "opening" || kind === "hole";
      const scope = isOfWall ? (wall ?? wallOf.get(word?.text ?? "") ?? null) : null;
      if (word) places.push({ kind, word, declares, wall: scope });
    };
    addOwnNames(statement, add);
    for (const expression of expressionsOf(statement)) {
      for (const leaf of leavesOf(expression)) if (leaf.kind === "name") add("let", leaf, false);
    }
  }
  return places.sort((a, b) => a.word.start - b.word.start);
}

function addOwnNames(
  statement: Syntax.Statement,
  add: (kind: NameKind, word: Syntax.Word | null, declares: boolean) => void,
): void {
  switch (statement.kind) {
    case "let":
    case "tile":
    case "trim":
    case "wall":
    case "opening":
    case "hole":
      add(statement.kind, statement.name, true);
      return;
    case "lay":
      add("tile", statement.name, false);
      return;
    case "lay-beside":
      add("tile", statement.lay, false);
      return;
    case "lay-courses":
      for (const { tile } of statement.runs) add("tile", tile, false);
      return;
    case "lining":
      add("tile", statement.tile, false);
      if (statement.across?.choice.kind !== "centred-on") return;
      if (statement.across.choice.name.text === "wall") return;
      add("opening", statement.across.choice.name, false);
      return;
    case "frame":
      add("trim", statement.trim, false);
      return;
    case "edge":
      if ("wall" in statement.meets) add("wall", statement.meets.wall, false);
      if ("trim" in statement.meets) add("trim", statement.meets.trim, false);
      return;
    case "across":
      if ("wall" in statement.choice) add("wall", statement.choice.wall, false);
      if (statement.choice.kind !== "centred-on") return;
      // The wall itself is no name.
      if (statement.choice.name.text !== "wall") add("opening", statement.choice.name, false);
      return;
    case "up":
      if (statement.choice.kind === "at-opening") add("opening", statement.choice.name, false);
      return;
    case "wish":
      if ("opening" in statement.wish) add("opening", statement.wish.opening, false);
      return;
  }
}

/** The wall of each opening, for the room's wishes; of several that share a name, the first. */
function openingWalls(tree: Syntax.SyntaxTree): Map<string, string> {
  const walls = new Map<string, string>();
  for (const { statement, blocks } of statementsOf(tree.statements)) {
    const [outer] = blocks;
    if (statement.kind !== "opening" || outer?.kind !== "wall" || !statement.name) continue;
    const { text } = statement.name;
    if (!walls.has(text)) walls.set(text, outer.name?.text ?? `wall at ${outer.start}`);
  }
  return walls;
}

/** The name at an offset, also just behind it. */
export function nameAt(names: readonly NamePlace[], offset: number): NamePlace | null {
  return names.find(({ word }) => word.start <= offset && offset <= word.end) ?? null;
}

/** Whether two places of one file speak of the same thing. */
export function isSameName(a: NamePlace, b: NamePlace): boolean {
  return a.kind === b.kind && a.word.text === b.word.text && a.wall === b.wall;
}
