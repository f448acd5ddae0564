import { type Nm, toMillimetres as mm } from "../measure/index.js";
import { type Ring, softJoints, type SoftName, type SolvedWall } from "../solver/index.js";

/** The soft joints in a wall's tile: which joint each is, its two sides, and what of it is filled. */
export function softJson(wall: SolvedWall): object[] {
  return softJoints(wall).runs.map(({ way, name, from, to, parts }) => ({
    way,
    ...nameJson(name),
    from: mm(from),
    to: mm(to),
    outlines: parts.map(({ shape }) => points(shape.outline)),
  }));
}

/** A course is counted as the pieces under the joint are; an upright joint in a lay has no more than its place. */
function nameJson(name: SoftName): object {
  if (name.kind === "bed") return { over: name.lay.below + name.course };
  return name.kind === "between" ? { between: name.lays.map(({ lay }) => lay.name) } : {};
}

function points(ring: Ring): [Nm, Nm][] {
  return Array.from({ length: ring.length / 2 }, (_, i) => [
    mm(ring[2 * i]!),
    mm(ring[2 * i + 1]!),
  ]);
}
