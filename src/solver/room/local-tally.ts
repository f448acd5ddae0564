import type { Nm } from "../../measure/index.js";
import type { Box } from "../box.js";
import { addCells, addPartCells, type Tally } from "../choose/cell.js";
import type { Effort } from "../choose/effort.js";
import type { Field } from "../choose/field.js";
import { firstPast, lastBefore } from "../lattice.js";

/** Where tiles stand: the left edge of one in course 1, the bottom of a row, and the number of the row that is course 1. */
export interface Standing {
  readonly x: Nm;
  readonly y: Nm;
  readonly first: number;
}

/** What the tiles that may meet a box come to. */
export function tallyAt(field: Field, { x, y, first }: Standing, box: Box, effort: Effort): Tally {
  const { across, up, shifts } = field;
  const tally: Tally = { slivers: 0, underHalf: 0, cuts: 0, tiles: 0 };
  const lowest = Math.max(first, firstPast(y, up.face, up.module, box.bottom));
  const highest = lastBefore(y, up.module, box.top);
  for (let row = lowest; row <= highest; row++) {
    const origin = x + shifts[(row - first) % shifts.length]!;
    const last = lastBefore(origin, across.module, box.right);
    for (let k = firstPast(origin, across.face, across.module, box.left); k <= last; k++) {
      const cells = { left: origin + k * across.module, bottom: y + row * up.module, many: 1 };
      effort.cells++;
      if (addCells(field, cells, tally) !== null) addPartCells(field, cells, tally, effort);
    }
  }
  return tally;
}
