import type { Nm } from "../measure/index.js";
import { isCorner, type Side } from "../model/index.js";
import {
  courseShift,
  isTold,
  type Lattice,
  meetingLays,
  moduleAcross,
  moduleUp,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
  type Takeaway,
} from "../solver/index.js";
import type { Alignment, Change } from "./comparison.js";

/** What two plans call their parts alike: a part's name, before and after, to one name of both. */
export type CommonName = (name: string) => string;

/** The names of a plan of which both call all parts alike. */
export const OWN_NAMES: CommonName = (name) => name;

/** Alignments of a wall that were gained (before is null) or lost (after is null). */
export function alignmentChanges(
  before: readonly Alignment[],
  after: readonly Alignment[],
  common: { readonly before: CommonName; readonly after: CommonName },
): Change<Alignment>[] {
  const old = keyed(before, common.before);
  const now = keyed(after, common.after);
  return [
    ...[...old].filter(([key]) => !now.has(key)).map(([, gone]) => ({ before: gone, after: null })),
    ...[...now].filter(([key]) => !old.has(key)).map(([, come]) => ({ before: null, after: come })),
  ];
}

function keyed(list: readonly Alignment[], common: CommonName): Map<string, Alignment> {
  return new Map(
    list.map((each) => {
      const name =
        each.kind === "courses meet" ? each.wall : each.kind === "centred" ? each.on : each.opening;
      const rest = each.kind === "centred" ? each.what : "side" in each ? each.side : "";
      return [JSON.stringify([each.kind, common(name), rest]), each];
    }),
  );
}

/** What stands in line on a wall: openings on joints, centre lines, courses at inside corners. */
export function alignmentsOf(plan: SolvedPlan, wall: SolvedWall): Alignment[] {
  const [lay] = wall.lays;
  if (!lay) return [];
  // What is set of a lay and what goes on over it each have openings of their own.
  const parts = lay.stand ? wall.lays : [lay];
  return [
    ...parts.flatMap((part) =>
      part.region.takeaways.flatMap((takeaway) => onJoints(part, takeaway)),
    ),
    ...centred(wall, lay),
    ...coursesMeet(plan, wall),
  ];
}

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

function onJoints(lay: SolvedLay, { opening, box }: Takeaway): Alignment[] {
  const { lattice, courses } = lay;
  const met = { floor: "bottom", ceiling: "top" } as const;
  const { reaches } = opening;
  const sides = reaches ? SIDES.filter((side) => side !== met[reaches]) : SIDES;
  const isOn = (side: Side): boolean => {
    if (side === "bottom" || side === "top") {
      return inJoint(box[side] - lattice.y, lattice.face.up, moduleUp(lattice));
    }
    const beside = courses.filter((course) => course.bottom < box.top && box.bottom < course.top);
    return beside.slice(0, lattice.q).some(({ number }) => {
      const from = box[side] - lattice.x - courseShift(lattice, number);
      return inJoint(from, lattice.face.across, moduleAcross(lattice));
    });
  };
  const name = `${opening.kind} ${opening.name}`;
  return sides.filter(isOn).map((side) => ({ kind: "opening on a joint", opening: name, side }));
}

/** Whether a place, counted from a tile's near edge, lies in a joint or at its edge. */
function inJoint(place: Nm, face: Nm, module: Nm): boolean {
  const within = place - Math.floor(place / module) * module;
  return within === 0 || within >= face;
}

/** What stands on the centre line of the wall and of each opening, in the first course that has it. */
function centred({ wall }: SolvedWall, { lattice }: SolvedLay): Alignment[] {
  const lines = [
    { on: "wall", doubled: wall.size.across },
    ...wall.openings.map(({ kind, name, at, size }) => ({
      on: `${kind} ${name}`,
      doubled: 2 * at.x + size.across,
    })),
  ];
  return lines.flatMap(({ on, doubled }): Alignment[] => {
    const what = onLine(lattice, doubled);
    return what ? [{ kind: "centred", what, on }] : [];
  });
}

/** Doubled lengths, so that half a nanometre is not lost; a start on a centre is rounded once. */
function onLine(lattice: Lattice, doubled: Nm): "tile" | "joint" | null {
  const module = 2 * moduleAcross(lattice);
  const stands = (place: Nm) => {
    const rest = ((place % module) + module) % module;
    return rest <= 1 || rest >= module - 1;
  };
  for (let course = 1; course <= lattice.q; course++) {
    const from = doubled - 2 * (lattice.x + courseShift(lattice, course));
    if (stands(from - lattice.face.across)) return "tile";
    if (stands(from + lattice.joint)) return "joint";
  }
  return null;
}

/** Corners at which the bed joints of all lays that meet there are one line; told once, as the rules tell a corner. */
function coursesMeet(plan: SolvedPlan, solved: SolvedWall): Alignment[] {
  return (["left", "right"] as const).flatMap((side): Alignment[] => {
    const { meets } = solved.wall.edges[side];
    if (!isCorner(meets) || !isTold(meets, side)) return [];
    const other = plan.walls.find((each) => each.wall.name === meets.wall);
    if (!other) return [];
    const end = { wall: other, side: side === "left" ? "right" : "left" } as const;
    const met = meetingLays({ wall: solved, side }, end);
    const inLine = met.every(({ lay, other: beside }) => sameBeds(lay.lattice, beside.lattice));
    return met.length > 0 && inLine ? [{ kind: "courses meet", wall: meets.wall }] : [];
  });
}

function sameBeds(a: Lattice, b: Lattice): boolean {
  const module = moduleUp(a);
  return a.face.up === b.face.up && module === moduleUp(b) && (a.y - b.y) % module === 0;
}
