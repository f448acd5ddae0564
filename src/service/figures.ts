import { formatLength, type Nm, type Unit } from "../measure/index.js";

/** Lengths in words, in the units that are wanted. */
export class Figures {
  constructor(readonly unit: Unit) {}

  length(nm: Nm): string {
    return formatLength(nm, this.unit);
  }

  /** `24 in x 36 in`. */
  size(across: Nm, up: Nm): string {
    return `${this.length(across)} x ${this.length(up)}`;
  }

  /** `18 in to 42 in`. */
  reach(from: Nm, to: Nm): string {
    return `${this.length(from)} to ${this.length(to)}`;
  }
}
