import type { Nm } from "../../measure/index.js";

/** A lay's courses up. */
export interface Rising {
  readonly face: Nm;
  readonly joint: Nm;
}

/** No more courses of a smaller tile than this are tried beside one of a larger. */
const MOST_COURSES = 64;

/**
 * The heights at which the courses of one lay meet another's that stand at `height`; none where
 * neither module is a whole multiple of the other.
 */
export function heightsMeeting(own: Rising, other: Rising, height: Nm): Nm[] {
  const [module, theirs] = [own.face + own.joint, other.face + other.joint];
  const [small, large] = [Math.min(module, theirs), Math.max(module, theirs)];
  if (large % small !== 0) return [];
  const twice = 2 * height - other.joint + own.joint;
  // Half a nanometre goes to either side.
  const bottoms = new Set([Math.floor(twice / 2), Math.ceil(twice / 2)]);
  const courses = module > theirs ? Math.min(MOST_COURSES, module / theirs) : 1;
  return [...bottoms].flatMap((bottom) =>
    Array.from({ length: courses }, (_, k) => bottom + k * theirs),
  );
}
