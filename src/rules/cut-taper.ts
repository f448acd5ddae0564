import type { Nm } from "../measure/index.js";
import type { Side } from "../model/index.js";
import {
  type Chain,
  isStraight,
  pieceBounds,
  pieceId,
  type Region,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
  visibleExtent,
} from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { cutsInto, sideInside, SIDES } from "./side-line.js";
import { tileOf } from "./tile-of.js";
import { type Ratio, ratioLimit, TAPER } from "./trade.js";
import { length, pieceCount, ratio, verb } from "./words.js";

/** A piece scribed to a side that is out of level or plumb, so narrow that its taper shows. */
export const cutTaper: Rule = {
  code: "cut/taper",
  severity: "warning",
  title: "a piece tapers by more than a tenth of its narrowest width",
  source: TAPER.source,
  limit: "taper",
  check: (wall, plan) =>
    SIDES.flatMap((side) => wall.lays.flatMap((lay) => findTapers(wall, plan, lay, side))),
};

/** A piece's taper at one side, and what is left of it at its narrow end. */
interface Taper {
  readonly piece: number;
  readonly by: Nm;
  readonly narrowest: Nm;
}

function findTapers(wall: SolvedWall, plan: SolvedPlan, lay: SolvedLay, side: Side): Finding[] {
  const line = shownSide(lay.region, side);
  // Along a slope of the wall's outline every piece tapers, and nothing can be done about it.
  if (isStraight(line) || wall.wall.edges[side].outlined) return [];
  const most = ratioLimit(plan.plan.limits, "taper", TAPER.most);
  const shown: Taper[] = [];
  for (let i = 0; i < lay.pieces.count; i++) {
    if (lay.pieces.cut[i] === 0 && !lay.pieces.visible.has(i)) continue;
    const taper = taperOf(lay, i, side, line);
    if (taper && taper.by * most.q > taper.narrowest * most.p) shown.push(taper);
  }
  return shown.length === 0 ? [] : [tell(wall, plan, lay, side, shown, most)];
}

function tell(
  wall: SolvedWall,
  plan: SolvedPlan,
  lay: SolvedLay,
  side: Side,
  shown: readonly Taper[],
  most: Ratio,
): Finding {
  const n = shown.length;
  const worst = shown.reduce((a, b) => (isWorse(b, a) ? b : a));
  return {
    origin: wall.wall.edges[side].origin,
    blocks: [lay.lay, lay.lay.tile, wall.wall],
    message:
      `${pieceCount(n)} along the ${side} ${verb(n, "tapers", "taper")}` +
      `${n === 1 ? "" : ", the worst"} by ${length(plan, worst.by)} where ` +
      `${length(plan, worst.narrowest)} is left at the narrow end; ` +
      `at most ${ratio(most)} of that is wanted`,
    pieces: shown.map(({ piece }) => pieceId(lay, piece)),
  };
}

/** Whether a taper is larger for its narrow end than another; between points, the longer one is. */
function isWorse(a: Taper, b: Taper): boolean {
  const [one, other] = [a.by * b.narrowest, b.by * a.narrowest];
  return one > other || (one === other && a.by > b.by);
}

/** The side as it is seen: where another wall's tile covers the end, up to that. */
function shownSide(region: Region, side: Side): Chain {
  if (side === "left") return region.hiddenLeft ?? region.left;
  if (side === "right") return region.hiddenRight ?? region.right;
  return region[side];
}

function taperOf(lay: SolvedLay, i: number, side: Side, line: Chain): Taper | null {
  const piece = pieceBounds(lay.pieces, i);
  // A measured side that stays clear of the piece, or only touches its edge, does not taper it.
  if (!cutsInto(line, piece, side)) return null;
  const { deepest, shallowest } = sideInside(line, tileOf(lay, i), side, piece);
  const seen = visibleExtent(lay.region, piece);
  if (!seen) return null;
  const narrowest = side === "left" || side === "right" ? seen.width : seen.height;
  return { piece: i, by: deepest - Math.max(0, shallowest), narrowest };
}
