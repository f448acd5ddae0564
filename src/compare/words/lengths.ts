import { formatLength, type Nm, type Unit } from "../../measure/index.js";
import type { Range, Shift } from "../comparison.js";

/** Lengths in words, in the units that are wanted. */
export class Lengths {
  constructor(readonly units: Unit) {}

  length(nm: Nm): string {
    return formatLength(nm, this.units);
  }

  /** `3 in`, or `2 5/8 in to 3 in`. */
  range({ least, most }: Range): string {
    const [low, high] = [this.length(least), this.length(most)];
    return low === high ? low : `${low} to ${high}`;
  }

  /** How far; what rounds to nothing is a hair. */
  far(nm: Nm): string {
    const far = this.length(Math.abs(nm));
    return /^0\+?[ "]/.test(far) ? "a hair" : far;
  }

  /** `up 3/8 in`, `right 2 in and down 1 in`. */
  shift({ across, up }: Shift): string {
    const ways = [
      ...(across === 0 ? [] : [`${across > 0 ? "right" : "left"} ${this.far(across)}`]),
      ...(up === 0 ? [] : [`${up > 0 ? "up" : "down"} ${this.far(up)}`]),
    ];
    return ways.join(" and ");
  }
}
