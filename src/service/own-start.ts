import { acrossWords } from "../sheets/index.js";
import type { Option, SolvedLay, SolvedWall } from "../solver/index.js";

/** A start to be written down; null: as it stands in the text. */
export type WrittenStart = Pick<Option, "up" | "joint"> & {
  readonly across: Option["across"] | null;
};

/**
 * The start that a lay has, as far as it can be written down. A block states one start across for all its tiles: where it
 * leaves that open and they came to start otherwise, it stays open.
 */
export function ownStart({ lays }: SolvedWall, laid: SolvedLay): WrittenStart {
  const { across, up, joint } = laid;
  const words = acrossWords(across, "mm");
  const isShared = lays.every(
    ({ lay, across: other }) =>
      lay.origin !== laid.lay.origin ||
      lay.goesOnFrom !== null ||
      acrossWords(other, "mm") === words,
  );
  return { across: isShared ? across : null, up, joint };
}
