import type { Nm } from "../../measure/index.js";
import { type CriticalJoints, meetingsOf } from "../choose/critical-joints.js";
import { type Condition, conditionsAcross, conditionsUp } from "../choose/conditions.js";
import type { Field } from "../choose/field.js";

/** A wall's fields at the ends of the range of joints. */
export interface Ends {
  readonly least: Field;
  readonly most: Field;
  /** Starts that are stated or wanted there, if any: what tiles meet from them is critical too. */
  readonly starts?: Readonly<Record<"across" | "up", readonly StartAtEnds[]>>;
}

/** The origin of a start at both ends of the range. */
export interface StartAtEnds {
  readonly least: Nm;
  readonly most: Nm;
}

/**
 * The joints at which two critical conditions meet: of one wall across, and up of any two walls, since
 * their courses may stand at one height.
 */
export function roomJoints(walls: readonly Ends[]): CriticalJoints {
  const [{ least, most }] = walls as [Ends, ...Ends[]];
  const [from, to] = [least.ground.joint, most.ground.joint];
  const joints = new Set<Nm>([from, to]);
  let isAll = true;
  for (const each of walls) {
    const across = [
      [...conditionsAcross(each.least), ...lines(each, "across", "least")],
      [...conditionsAcross(each.most), ...lines(each, "across", "most")],
    ] as const;
    const { face } = each.least.across;
    isAll = meetingsOf(joints, across, face, each.least.shifts.length, from, to) && isAll;
  }
  for (const face of new Set(walls.map((each) => each.least.up.face))) {
    const alike = walls.filter((each) => each.least.up.face === face);
    const up = [
      alike.flatMap((each) => [...conditionsUp(each.least), ...lines(each, "up", "least")]),
      alike.flatMap((each) => [...conditionsUp(each.most), ...lines(each, "up", "most")]),
    ] as const;
    isAll = meetingsOf(joints, up, face, 1, from, to) && isAll;
  }
  return { joints: [...joints].sort((a, b) => a - b), isAll };
}

function lines({ starts }: Ends, axis: "across" | "up", end: "least" | "most"): Condition[] {
  return (starts?.[axis] ?? []).map((start) => ({
    at: start[end],
    halved: false,
    abrupt: false,
  }));
}
