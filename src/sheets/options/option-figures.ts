import type { Plan } from "../../model/index.js";
import type { LaidOption } from "../../solver/index.js";
import { takeoff } from "../../takeoff/index.js";
import { layReading, type SmallestCut } from "../reading.js";

/** What is told of an option besides its score. */
export interface OptionFigures {
  /** null when no piece is cut. */
  readonly smallest: SmallestCut | null;
  readonly cutPieces: number;
  /** Tiles that the wall takes alone, its offcuts used again. */
  readonly tilesNeeded: number;
}

export function optionFigures(plan: Plan, { wall, lay }: LaidOption): OptionFigures {
  const { smallest, cuts } = layReading(wall.wall, lay);
  const { tiles } = takeoff({ plan, walls: [wall] });
  const taken = tiles.find(({ tile }) => tile === lay.lay.tile);
  return { smallest, cutPieces: cuts, tilesNeeded: taken?.needed ?? 0 };
}
