import { formatLength, type Unit } from "../measure/index.js";
import type { SoftName } from "../solver/index.js";
import { courseName } from "./set-words.js";

/** `at 84 13/16 in`, `over course 4`, `between dado and field`: which soft joint of the tile it is. */
export function softPlace(name: SoftName, units: Unit): string {
  switch (name.kind) {
    case "head":
      return `at ${formatLength(name.x, units)}`;
    case "bed":
      return `over ${courseName(name.lay, name.course)}`;
    case "between":
      return `between ${name.lays.map(({ lay }) => lay.name).join(" and ")}`;
  }
}
