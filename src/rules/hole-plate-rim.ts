import type { Nm } from "../measure/index.js";
import { type Hole, plateReach, plateSize, type Side } from "../model/index.js";
import {
  type Box,
  courseBottom,
  courseShift,
  layRound,
  moduleAcross,
  moduleUp,
  overlaps,
  pieceBounds,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
} from "../solver/index.js";
import { expectedLippage } from "./lippage-expected.js";
import type { Finding, Rule } from "./rule.js";
import { COMMON_PRACTICE, lengthLimit, LIPPAGE, lippageAt } from "./trade.js";
import { length, lengthOff } from "./words.js";

/**
 * A plate whose rim doesn't lie well: along a joint, of which half shows; or over joints at which bowed tile
 * makes edges stand proud of each other, so that it rocks and its seal is open. A joint that only crosses
 * under the rim of flat tile is common, and silent.
 */
export const holePlateRim: Rule = {
  code: "hole/plate-rim",
  severity: "information",
  title: "a plate's rim runs along a joint, or over joints of bowed tile",
  source: `${COMMON_PRACTICE}; how far proud: ${LIPPAGE.source}`,
  limit: null,
  check: (wall, plan) =>
    wall.wall.holes.flatMap((hole) => {
      const lay = hole.plate && layRound(wall, hole);
      if (!lay) return [];
      return [...findAlong(hole, lay, wall, plan), ...findRocking(hole, lay, wall, plan)];
    }),
};

function findAlong(hole: Hole, lay: SolvedLay, wall: SolvedWall, plan: SolvedPlan): Finding[] {
  const sides = sidesInJoints(hole, lay);
  if (sides.length === 0) return [];
  return [
    {
      origin: hole.origin,
      blocks: [lay.lay, lay.lay.tile, wall.wall],
      message:
        `the rim of the plate of ${hole.name} runs in a joint at its ${sides.join(" and ")}, and part of ` +
        `${length(plan, lay.joint)} of joint shows beside it; a rim on tile is wanted`,
    },
  ];
}

/** A joint in which a side of a plate's rim lies. */
export interface RimJoint {
  readonly side: Side;
  /** The joint's two sides: x beside the plate, y under and over it. */
  readonly from: Nm;
  readonly to: Nm;
}

/** The sides at which the plate's outermost line lies in a joint, its edges with it. */
export function sidesInJoints(hole: Hole, lay: SolvedLay): Side[] {
  return rimJoints(hole, lay).map(({ side }) => side);
}

/** The joints in which the plate's outermost line lies, their edges with them, side by side. */
export function rimJoints(hole: Hole, { lattice, region }: SolvedLay): RimJoint[] {
  if (!hole.plate) return [];
  const { across, up } = plateReach(hole);
  const { x, y } = hole.at;
  const isRound = hole.plate.kind === "round";
  const beside = isRound ? { bottom: y, top: y } : { bottom: y - up, top: y + up };
  const rows = [rowAt(beside.bottom), rowAt(beside.top)] as const;
  const { face } = lattice;
  const headAt = (side: Side, at: number): RimJoint[] => {
    if (at <= region.bounds.left || at >= region.bounds.right) return [];
    for (let row = rows[0]; row <= rows[1]; row++) {
      const past = restOf(at - lattice.x - courseShift(lattice, row), moduleAcross(lattice));
      const from = at - past + face.across;
      if (past >= face.across) return [{ side, from, to: from + lattice.joint }];
    }
    return [];
  };
  const bedAt = (side: Side, at: number): RimJoint[] => {
    if (at <= region.bounds.bottom || at >= region.bounds.top) return [];
    const past = restOf(at - lattice.y, moduleUp(lattice));
    const from = at - past + face.up;
    return past >= face.up ? [{ side, from, to: at - past + moduleUp(lattice) }] : [];
  };
  return [
    ...headAt("left", x - across),
    ...headAt("right", x + across),
    ...bedAt("bottom", y - up),
    ...bedAt("top", y + up),
  ];

  function rowAt(at: number): number {
    return 1 + Math.floor((at - courseBottom(lattice, 1)) / moduleUp(lattice));
  }
}

function restOf(length: number, module: number): number {
  return length - module * Math.floor(length / module);
}

function findRocking(hole: Hole, lay: SolvedLay, wall: SolvedWall, plan: SolvedPlan): Finding[] {
  const allowed = lengthLimit(plan.plan.limits, "lippage", lippageAt(lay.joint));
  const expected = expectedLippage(lay.lay);
  if (expected <= allowed) return [];
  const under = tilesUnder(hole, lay);
  if (under < 2) return [];
  const { across, up } = lay.lattice.face;
  const { across: wide, up: high } = plateSize(hole.plate!);
  const within =
    wide <= across && high <= up ? "a plate within one tile" : "flatter tile under the plate";
  return [
    {
      origin: hole.origin,
      blocks: [lay.lay, lay.lay.tile, wall.wall],
      message:
        `the plate of ${hole.name} lies over ${under} tiles whose edges stand up to ` +
        `${lengthOff(plan, expected, allowed)} proud of each other by their bow; ` +
        `at most ${length(plan, allowed)}, or ${within}, is wanted`,
    },
  ];
}

/** How many pieces lie under a plate, by its outer box. */
function tilesUnder({ at: { x, y }, ...hole }: Hole, { pieces }: SolvedLay): number {
  const { across, up } = plateReach(hole);
  const box: Box = { left: x - across, right: x + across, bottom: y - up, top: y + up };
  let count = 0;
  for (let i = 0; i < pieces.count; i++) if (overlaps(pieceBounds(pieces, i), box)) count++;
  return count;
}
