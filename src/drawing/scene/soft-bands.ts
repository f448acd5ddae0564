import { softJoints, type SolvedWall } from "../../solver/index.js";
import { pictureRing } from "../picture.js";
import type { Band } from "../scene.js";

/** The soft joints in a wall's tile, one after the other. */
export function softBands(solved: SolvedWall): Band[] {
  return softJoints(solved).runs.flatMap(({ parts }, i) => {
    if (parts.length === 0) return [];
    const rings = parts.flatMap(({ shape }) => [shape.outline, ...shape.holes]);
    return [{ kind: "soft", part: `tile-${i + 1}`, rings: rings.map(pictureRing) }];
  });
}
