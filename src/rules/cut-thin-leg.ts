import type { Nm } from "../measure/index.js";
import { type Limits, type Side, sliverLimit } from "../model/index.js";
import {
  type Box,
  overlaps,
  pieceBounds,
  pieceId,
  type Region,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
  type Takeaway,
  visibleExtent,
} from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { COMMON_PRACTICE, lengthLimit } from "./trade.js";
import { length, openingName, pieceCount, sizesOff, verb } from "./words.js";

/** A leg of an L or U cut that is narrower than the sliver limit: it breaks in the cut. */
export const cutThinLeg: Rule = {
  code: "cut/thin-leg",
  severity: "warning",
  title: "a leg of an L or U cut is narrower than a sliver, and breaks in the cut",
  source: COMMON_PRACTICE,
  limit: "leg",
  check: (wall, plan) =>
    wall.lays.flatMap((lay) =>
      lay.region.takeaways.flatMap((takeaway) => {
        const notched = notchedBy(lay, takeaway);
        return SIDES.flatMap((side) => findLegs(wall, plan, { lay, takeaway, notched, side }));
      }),
    ),
};

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

const WHERE: Readonly<Record<Side, string>> = {
  left: "left of",
  right: "right of",
  bottom: "under",
  top: "over",
};

/** The legs that pieces of a lay have at one side of an opening. */
interface LegPlace {
  readonly lay: SolvedLay;
  readonly takeaway: Takeaway;
  /** The pieces that the opening cuts into. */
  readonly notched: readonly number[];
  readonly side: Side;
}

function findLegs(wall: SolvedWall, plan: SolvedPlan, place: LegPlace): Finding[] {
  const { lay, takeaway, notched, side } = place;
  const upright = side === "left" || side === "right";
  const limit = legLimit(lay.lattice.face[upright ? "across" : "up"], plan.plan.limits);
  const thin: number[] = [];
  let [least, most] = [Infinity, 0];
  for (const i of notched) {
    const size = legSize(lay.region, pieceBounds(lay.pieces, i), takeaway, side);
    if (size === null || size >= limit) continue;
    thin.push(i);
    [least, most] = [Math.min(least, size), Math.max(most, size)];
  }
  if (thin.length === 0) return [];
  const n = thin.length;
  return [
    {
      origin: takeaway.opening.origin,
      blocks: [takeaway.opening, lay.lay, lay.lay.tile, wall.wall],
      message:
        `${pieceCount(n)} ${verb(n, "keeps", "keep")} a leg ${sizesOff(plan, least, most, limit)} ` +
        `${upright ? "wide" : "high"} ${WHERE[side]} ${openingName(takeaway.opening)}; ` +
        `at least ${length(plan, limit)} is wanted`,
      pieces: thin.map((i) => pieceId(lay, i)),
    },
  ];
}

/** The sliver limit, unless the plan states one for legs; a plan that waives slivers still has legs. */
function legLimit(face: Nm, limits: Limits): Nm {
  const slivers = limits.sliver?.kind === "off" ? {} : limits;
  return lengthLimit(limits, "leg", sliverLimit(face, slivers));
}

/** The pieces that an opening cuts into: those that are no plain rectangles and whose bounds it overlaps. */
function notchedBy({ pieces }: SolvedLay, { box }: Takeaway): number[] {
  return [...pieces.shapes.keys()].filter((i) => overlaps(pieceBounds(pieces, i), box));
}

/** How much of a piece is seen beside an opening at one side; null when nothing stands there. */
function legSize(region: Region, piece: Box, takeaway: Takeaway, side: Side): Nm | null {
  const leg = legBox(piece, takeaway.box, side);
  if (leg === null) return null;
  const free = region.takeaways.reduce(
    (box, other) => (other === takeaway ? box : clearOf(box, other.box, side)),
    leg,
  );
  const seen = visibleExtent(region, free);
  if (seen === null) return null;
  return side === "left" || side === "right" ? seen.width : seen.height;
}

function legBox(piece: Box, box: Box, side: Side): Box | null {
  const bottom = Math.max(piece.bottom, box.bottom);
  const top = Math.min(piece.top, box.top);
  const left = Math.max(piece.left, box.left);
  const right = Math.min(piece.right, box.right);
  switch (side) {
    case "left":
      return piece.left < box.left ? { left: piece.left, bottom, right: box.left, top } : null;
    case "right":
      return box.right < piece.right ? { left: box.right, bottom, right: piece.right, top } : null;
    case "bottom":
      return piece.bottom < box.bottom
        ? { left, bottom: piece.bottom, right, top: box.bottom }
        : null;
    case "top":
      return box.top < piece.top ? { left, bottom: box.top, right, top: piece.top } : null;
  }
}

/** The leg as far as the next opening that cuts into it. */
function clearOf(leg: Box, other: Box, side: Side): Box {
  if (!overlaps(leg, other)) return leg;
  switch (side) {
    case "left":
      return { ...leg, left: other.right };
    case "right":
      return { ...leg, right: other.left };
    case "bottom":
      return { ...leg, bottom: other.top };
    case "top":
      return { ...leg, top: other.bottom };
  }
}
