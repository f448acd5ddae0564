import type { Nm } from "../../measure/index.js";
import { type Condition, conditionsAcross, conditionsUp } from "./conditions.js";
import type { Field } from "./field.js";

/** A condition as it moves with the joint: doubled place at the least joint, and its doubled slope. */
interface Moving {
  readonly at2: Nm;
  readonly slope2: number;
  readonly halved: boolean;
}

/** The most conditions of one direction that are met with each other; the sides' come first. */
const MOST_CONDITIONS = 300;

/** The most joints that are collected. */
const MOST_MEETINGS = 10_000;

/** Critical joints in rising order, and whether they are all there are. */
export interface CriticalJoints {
  readonly joints: readonly Nm[];
  readonly isAll: boolean;
}

/**
 * The joints at which two critical conditions of one direction meet, and both ends of the range. `least` and `most` are the fields at the ends of the range.
 */
export function criticalJoints(least: Field, most: Field): CriticalJoints {
  const from = least.ground.joint;
  const to = most.ground.joint;
  if (from === to) return { joints: [from], isAll: true };
  const joints = new Set<Nm>([from, to]);
  const q = least.shifts.length;
  const across = [conditionsAcross(least), conditionsAcross(most)] as const;
  const up = [conditionsUp(least), conditionsUp(most)] as const;
  const isAllAcross = meetingsOf(joints, across, least.across.face, q, from, to);
  const isAll = meetingsOf(joints, up, least.up.face, 1, from, to) && isAllAcross;
  return { joints: [...joints].sort((a, b) => a - b), isAll };
}

/**
 * Adds the joints between `from` and `to` at which two of the conditions of one direction meet; they
 * are given as they are at either end of the range. `q` is the number of the bond's phases. Whether these
 * are all.
 */
export function meetingsOf(
  joints: Set<Nm>,
  [least, most]: readonly [readonly Condition[], readonly Condition[]],
  face: Nm,
  q: number,
  from: Nm,
  to: Nm,
): boolean {
  const conditions = moving(least, most, to - from);
  addMeetings(joints, conditions.slice(0, MOST_CONDITIONS), face, q, from, to);
  return conditions.length <= MOST_CONDITIONS && joints.size < MOST_MEETINGS;
}

function moving(least: readonly Condition[], most: readonly Condition[], run: Nm): Moving[] {
  const seen = new Map<string, Moving>();
  least.forEach((condition, i) => {
    const other = most[i];
    if (!other) return;
    const times = condition.halved ? 1 : 2;
    const at2 = times * condition.at;
    const slope2 = Math.round((times * (other.at - condition.at)) / run);
    const { halved } = condition;
    seen.set(`${at2} ${slope2} ${halved}`, { at2, slope2, halved });
  });
  return [...seen.values()];
}

/**
 * Two conditions meet where they are a whole number of 1/q modules apart, or of half ones of those
 * where a balance is concerned: (D + E (J - from)) / (face + J) = n / 2q, all doubled.
 */
function addMeetings(
  joints: Set<Nm>,
  conditions: readonly Moving[],
  face: Nm,
  q: number,
  from: Nm,
  to: Nm,
): void {
  for (let i = 0; i < conditions.length; i++) {
    for (let j = 0; j < i; j++) {
      const d = conditions[i]!.at2 - conditions[j]!.at2;
      const e = conditions[i]!.slope2 - conditions[j]!.slope2;
      const atLeast = (q * d) / (face + from);
      const atMost = (q * (d + e * (to - from))) / (face + to);
      const step = conditions[i]!.halved || conditions[j]!.halved ? 1 : 2;
      const low = step * Math.ceil(Math.min(atLeast, atMost) / step);
      const high = Math.max(atLeast, atMost);
      for (let n = low; n <= high && joints.size < MOST_MEETINGS; n += step) {
        // q (d + e (J - from)) = n (face + J)
        if (n === q * e) continue;
        const joint = (n * face - q * (d - e * from)) / (q * e - n);
        for (const near of [Math.floor(joint), Math.ceil(joint)]) {
          if (near > from && near < to) joints.add(near);
        }
      }
    }
  }
}
