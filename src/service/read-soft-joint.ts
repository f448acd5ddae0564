import { softPlace } from "../rules/index.js";
import { type Shape, softJoints, softLength, type SolvedWall } from "../solver/index.js";
import type { Figures } from "./figures.js";
import type { Read } from "./read-spot.js";

/** The soft joint of a wall's tile of which a part is at a spot; null where none is. */
export function readSoftJoint(
  wall: SolvedWall,
  isAt: (shape: Shape) => boolean,
  figures: Figures,
): Read | null {
  for (const run of softJoints(wall).runs) {
    const part = run.parts.find(({ shape }) => isAt(shape));
    if (!part) continue;
    return {
      title: `Soft joint ${softPlace(run.name, figures.unit)}`,
      facts: [
        ["width", figures.length(run.to - run.from)],
        ["length", figures.length(softLength(run))],
      ],
      shape: part.shape,
      piece: null,
      origin: run.origin,
    };
  }
  return null;
}
