import { NM_PER, type Nm } from "../measure/index.js";
import type { Tile } from "../model/index.js";
import type { SolvedPlan, SolvedWall } from "../solver/index.js";
import type { Rule } from "./rule.js";
import { COMMON_PRACTICE } from "./trade.js";
import { length } from "./words.js";

const INCH = NM_PER.inch;
const METRIC_STEP = 50 * NM_PER.mm;

/** Smaller than this in both ways is a mosaic's piece, whose real size is often round. */
const LEAST: Nm = 3 * INCH;

/**
 * A face of whole inches, or of whole 50 mm, both ways: the size on the box, most likely, with the
 * joint in it. A tile whose `variation` is stated was measured. Told once a tile.
 */
export const tileNominal: Rule = {
  code: "tile/nominal",
  severity: "information",
  title: "a face in whole inches or 50 mm may be the nominal size, not the real one",
  source: COMMON_PRACTICE,
  limit: "nominal",
  check: (wall, plan) =>
    wall.lays.flatMap(({ lay: { tile } }) => {
      if (tile.variation !== null || !isRound(tile) || !isFirst(wall, plan, tile)) return [];
      const { across, up } = tile.face;
      return [
        {
          origin: tile.origin,
          blocks: [tile],
          message:
            `tile ${tile.name} has a face of ${length(plan, across)} x ${length(plan, up)}, which may be its nominal ` +
            `size; the real face, measured, and its \`variation\` are wanted`,
        },
      ];
    }),
};

function isRound({ face: { across, up } }: Tile): boolean {
  if (across < LEAST && up < LEAST) return false;
  return [INCH, METRIC_STEP].some((step) => across % step === 0 && up % step === 0);
}

/** Whether a tile is first laid on this wall. */
function isFirst(wall: SolvedWall, { walls }: SolvedPlan, tile: Tile): boolean {
  return walls.find(({ lays }) => lays.some(({ lay }) => lay.tile === tile)) === wall;
}
