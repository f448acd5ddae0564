import type { Nm } from "../measure/index.js";
import { NM_PER } from "../measure/index.js";
import { cutOf, type SolvedPlan } from "../solver/index.js";
import { wallMarks } from "./labels/wall-marks.js";
import type { Takeoff, TileTakeoff } from "./takeoff.js";
import { purchaseOf } from "./tiles/purchase.js";

/** What a saw takes where the plan names none: 3/32 in (common practice). */
const USUAL_KERF: Nm = (3 * NM_PER.inch) / 32;

/** What a solved plan takes: the cuts of each wall, the tiles they come from, and what to buy. */
export function takeoff(solved: SolvedPlan): Takeoff {
  const marks = wallMarks(solved.plan.walls.map((wall) => wall.name));
  const kerf = solved.plan.saw?.kerf ?? null;
  return {
    walls: solved.walls.map(({ wall }, i) => ({
      wall: wall.name,
      mark: marks[i]!,
      pieces: [],
      batches: [],
    })),
    tiles: tilesOf(solved),
    trims: [],
    materials: { grout: [], sealant: [], mortar: [], membrane: [] },
    saw: {
      passes: 0,
      holes: 0,
      mitres: 0,
      kerf: kerf ?? USUAL_KERF,
      kerfStated: kerf !== null,
    },
  };
}

function tilesOf({ plan, walls }: SolvedPlan): TileTakeoff[] {
  return plan.tiles.flatMap((tile) => {
    const tables = walls
      .flatMap((wall) => wall.lays)
      .filter(({ lay }) => lay.tile.name === tile.name)
      .map((lay) => lay.pieces);
    if (tables.length === 0) return [];
    let whole = 0;
    for (const pieces of tables) {
      for (let i = 0; i < pieces.count; i++) if (cutOf(pieces, i) === "none") whole++;
    }
    const face = 2n * BigInt(tile.face.across) * BigInt(tile.face.up);
    const set = BigInt(whole) * face;
    return [
      {
        tile,
        whole,
        cut: [],
        cutBound: 0,
        needed: whole,
        ...purchaseOf(tile, whole),
        doubleArea: { set, offcuts: 0n, kerf: 0n, cutOut: 0n },
      },
    ];
  });
}
