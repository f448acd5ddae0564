import { showsEnd, type Side } from "../model/index.js";
import { pieceBounds, pieceId, type SolvedLay, type SolvedWall } from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { sideInside, SIDES } from "./side-line.js";
import { tileOf } from "./tile-of.js";
import { COMMON_PRACTICE } from "./trade.js";
import { pieceCount, verb } from "./words.js";

/** A cut edge that is left to be seen: on a side that is free, or laps over an outside corner, without trim. */
export const edgeBare: Rule = {
  code: "edge/bare",
  severity: "warning",
  title: "a cut edge is left bare on a free side, or over an outside corner, without trim",
  source: COMMON_PRACTICE,
  limit: "bare",
  insides: "each",
  check: (wall) =>
    SIDES.filter((side) => isBare(wall, side)).flatMap((side) =>
      wall.lays
        .filter((lay) => !lay.inner.includes(side))
        .flatMap((lay) => findBare(wall, lay, side)),
    ),
};

function isBare({ wall }: SolvedWall, side: Side): boolean {
  const { meets } = wall.edges[side];
  return showsEnd(meets);
}

function findBare(wall: SolvedWall, lay: SolvedLay, side: Side): Finding[] {
  const bare: number[] = [];
  for (let i = 0; i < lay.pieces.count; i++) {
    if (lay.pieces.cut[i] !== 0 && cutAtSide(lay, i, side)) bare.push(i);
  }
  if (bare.length === 0) return [];
  const n = bare.length;
  const place = wall.wall.edges[side].meets.kind === "free" ? "free" : "outside corner at the";
  return [
    {
      origin: wall.wall.edges[side].origin,
      blocks: [lay.lay, lay.lay.tile, wall.wall],
      message:
        `${pieceCount(n)} ${verb(n, "shows a cut edge", "show cut edges")} at the ${place} ${side}; ` +
        `trim, or the tile's own edge, is wanted there`,
      pieces: bare.map((i) => pieceId(lay, i)),
    },
  ];
}

/** Whether a piece reaches the wall's side, and the side cuts into its tile. */
function cutAtSide(lay: SolvedLay, i: number, side: Side): boolean {
  const { region } = lay;
  const piece = pieceBounds(lay.pieces, i);
  const reaches = sideInside(region[side], piece, side, piece).deepest >= 0;
  return reaches && sideInside(region[side], tileOf(lay, i), side, piece).deepest > 0;
}
