import type { TrimRun } from "../../solver/index.js";
import { pictureRing } from "../picture.js";
import type { TrimScene } from "../scene.js";

/** The trim of a wall, run by run; whole lengths apart from those that are cut or mitred. */
export function trimScenes(runs: readonly TrimRun[]): TrimScene[] {
  return runs.map((run) => ({
    part: "opening" in run.along ? `${run.along.opening.name}-${run.side}` : `edge-${run.side}`,
    pieces: run.pieces.filter((piece) => piece.whole).map((p) => pictureRing(p.shape.outline)),
    cut: run.pieces.filter((piece) => !piece.whole).map((p) => pictureRing(p.shape.outline)),
  }));
}
