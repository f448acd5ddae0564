import { goesStraightOn, type SolvedLay, type SolvedWall } from "../../solver/index.js";

/**
 * The lay that a wall is set out for: its main one, of which courses are set what is still to come over them.
 * Where all of it is set, the last that was; null where nothing is laid.
 */
export function layToCome({ lays }: Pick<SolvedWall, "lays">): SolvedLay | null {
  let lay = lays[0] ?? null;
  while (lay?.stand) {
    const set = lay;
    const over = lays.find((each) => goesStraightOn(each.lay, set.lay));
    if (!over) return lay;
    lay = over;
  }
  return lay;
}

/** Whether a lay stands on courses that are set. */
export function isOverSet({ lays }: Pick<SolvedWall, "lays">, lay: SolvedLay): boolean {
  return lays.some((each) => goesStraightOn(lay.lay, each.lay));
}

/** The lays whose courses are to come; where all are set, the last that was of the main one. */
export function laysToCome(wall: Pick<SolvedWall, "lays">): readonly SolvedLay[] {
  const main = layToCome(wall);
  return wall.lays.filter((lay) => lay.stand === null || lay === main);
}

/** Whether all of a lay that `layToCome` gives is on the wall, so that nothing of it is left to measure for. */
export function isAllSet({ lay }: SolvedLay): boolean {
  return lay.set?.from === 1;
}
