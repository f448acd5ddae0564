import { counted } from "../measure/index.js";
import type { Origin, SourceRange } from "../model/index.js";
import type { TileTakeoff, WallCuts } from "../takeoff/index.js";
import type { DocumentState } from "./document-state.js";
import { headingEnd, type Hint } from "./hints.js";
import { takenOf } from "./taken.js";

/** Larger plans have no counts in the text: how tiles share cuts would be worked out at every pause. */
const MOST_PIECES = 20_000;

/**
 * What a plan takes, at the end of headings: of each tile how many are needed, of each wall how many
 * pieces are cut. From the same takeoff as the setter's sheet.
 */
export function countsOf(state: DocumentState, within?: SourceRange): Hint[] {
  const { solved } = state.outcome;
  const pieces = solved.walls
    .flatMap(({ lays }) => lays)
    .reduce((n, lay) => n + lay.pieces.count, 0);
  if (pieces === 0 || pieces > MOST_PIECES) return [];
  const taken = takenOf(solved);
  return [
    ...taken.tiles.flatMap((tile) => hintAt(state, tile.tile.origin, tileCount(tile), within)),
    ...solved.walls.flatMap(({ wall, lays }, i) =>
      lays.length === 0 ? [] : hintAt(state, wall.origin, wallCount(taken.walls[i]!), within),
    ),
  ];
}

function hintAt(
  state: DocumentState,
  { file, range }: Origin,
  { text, help }: Pick<Hint, "text" | "help">,
  within: SourceRange | undefined,
): Hint[] {
  const { line } = range.start;
  if (file !== state.document.file) return [];
  if (within && (line < within.start.line || line > within.end.line)) return [];
  return [{ at: headingEnd(state, line), text, help, edits: [] }];
}

function tileCount(taken: TileTakeoff): Pick<Hint, "text" | "help"> {
  const { needed, cut, toCome } = taken;
  const { boxes, bought } = toCome ?? taken;
  const boxed = boxes ? `, ${counted(boxes.count, "box", "boxes")}` : "";
  return {
    text: `# ${toCome ? `${toCome.needed} to come of ${needed}` : `${needed} needed`}${boxed}`,
    help: `${counted(cut.length, "tile")} of them cut up${toCome ? `, ${toCome.used} used already` : ""}; ${counted(bought, "tile")} ${toCome ? "still to have" : "bought"}.`,
  };
}

function wallCount({ pieces, batches }: WallCuts): Pick<Hint, "text" | "help"> {
  return {
    text: `# ${counted(pieces.length, "cut")}`,
    help: `Cut in ${counted(batches.length, "batch", "batches")}: the saw is set as often.`,
  };
}
