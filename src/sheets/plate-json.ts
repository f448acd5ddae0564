import { toMillimetres } from "../measure/index.js";
import type { Plate } from "../model/index.js";

/** A plate in millimetres: `{ "across": 165.1 }` is round, `{ "across": 150, "up": 100 }` has four sides. */
export function plateJson(plate: Plate): object {
  const across = toMillimetres(plate.across);
  return plate.kind === "round" ? { across } : { across, up: toMillimetres(plate.up) };
}
