import type { Plan } from "../../model/index.js";
import type { SolvedWall } from "../../solver/index.js";
import type { WallCuts } from "../takeoff.js";
import { piecesToCut, type PieceToCut } from "./pieces-to-cut.js";
import { wallCuts } from "./wall-cuts.js";

/** A wall with its pieces to cut, and the surfaces inside its openings with theirs. */
export interface SurfaceToCut {
  readonly solved: SolvedWall;
  /** What its labels begin with. */
  readonly mark: string;
  readonly toCut: readonly PieceToCut[];
  readonly insides: readonly SurfaceToCut[];
}

/** The labels of a surface inside an opening begin with the wall's mark and both names, such as `B.shelf.sill`. */
export function surfaceToCut(solved: SolvedWall, mark: string): SurfaceToCut {
  return {
    solved,
    mark,
    toCut: piecesToCut(solved, mark),
    insides: solved.insides.map((each) =>
      surfaceToCut(each, `${mark}.${each.opening.name}.${each.face}`),
    ),
  };
}

/** The pieces of a wall, then those of each surface inside its openings. */
export function allToCut({ toCut, insides }: SurfaceToCut): readonly (readonly PieceToCut[])[] {
  return [toCut, ...insides.flatMap(allToCut)];
}

export function cutsOf(plan: Plan, { solved, mark, toCut, insides }: SurfaceToCut): WallCuts {
  return wallCuts(
    plan,
    solved,
    mark,
    toCut,
    insides.map((each) => cutsOf(plan, each)),
  );
}
