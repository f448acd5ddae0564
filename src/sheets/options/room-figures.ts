import type { Nm } from "../../measure/index.js";
import type { SolvedPlan } from "../../solver/index.js";
import { takeoff } from "../../takeoff/index.js";
import { layReading } from "../reading.js";

/** What is told of a room's layout besides its score. */
export interface RoomFigures {
  /** The smallest visible width of a cut piece, and the smallest height; null where no piece is cut. */
  readonly width: Nm | null;
  readonly height: Nm | null;
  readonly cutPieces: number;
  /** Tiles that the room takes, its offcuts used again. */
  readonly tilesNeeded: number;
}

export function roomFigures(solved: SolvedPlan): RoomFigures {
  const readings = solved.walls.flatMap((wall) =>
    wall.lays.map((lay) => layReading(wall.wall, lay)),
  );
  const sizes = readings.flatMap(({ smallest }) => smallest ?? []);
  const least = (sides: readonly Nm[]): Nm | null => (sides.length > 0 ? Math.min(...sides) : null);
  return {
    width: least(sizes.map(({ width }) => width)),
    height: least(sizes.map(({ height }) => height)),
    cutPieces: readings.reduce((sum, { cuts }) => sum + cuts, 0),
    tilesNeeded: takeoff(solved).tiles.reduce((sum, { needed }) => sum + needed, 0),
  };
}
