import type { TrimRun } from "../../solver/index.js";
import { pictureRing } from "../picture.js";
import type { TrimScene } from "../scene.js";

/** The trim of a wall, run by run; whole lengths apart from those that are cut or mitred. */
export function trimScenes(runs: readonly TrimRun[]): TrimScene[] {
  return runs.map((run, i) => ({
    part: partOf(run, runs.slice(0, i)),
    pieces: run.pieces.filter((piece) => piece.whole).map((p) => pictureRing(p.shape.outline)),
    cut: run.pieces.filter((piece) => !piece.whole).map((p) => pictureRing(p.shape.outline)),
  }));
}

/** Names a run within its wall. A side that steps has several: those after the first have a number. */
function partOf({ along, side }: TrimRun, earlier: readonly TrimRun[]): string {
  if ("opening" in along) return `${along.opening.name}-${side}`;
  const before = earlier.filter((other) => "edge" in other.along && other.side === side).length;
  return before === 0 ? `edge-${side}` : `edge-${side}-${before + 1}`;
}
