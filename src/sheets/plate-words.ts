import type { Nm } from "../measure/index.js";
import type { Plate } from "../model/index.js";

/** `6 1/2 in` of a round plate, `6 in x 4 in` of one with four sides. */
export function plateWords(plate: Plate, print: (nm: Nm) => string): string {
  const across = print(plate.across);
  return plate.kind === "round" ? across : `${across} x ${print(plate.up)}`;
}
