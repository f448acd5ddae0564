import { plainText } from "../../drawing/index.js";
import { type Nm, toMillimetres } from "../../measure/index.js";
import type { SolvedPlan } from "../../solver/index.js";
import { allCuts, type Batch, type Takeoff } from "../../takeoff/index.js";
import { cutSteps, KIND_WORDS } from "../paper/cut-words.js";
import { type Ground, groundOf } from "../paper/ground.js";
import { sidesWords, titleOf, wallTitle } from "../paper/words.js";
import { type Cell, spreadsheet } from "./spreadsheet.js";

const COLUMNS = [
  "Label",
  "Wall",
  "Batch",
  "Kind",
  "Tile",
  "Width",
  "Width mm",
  "Height",
  "Height mm",
  "Set and cut",
  "Factory edges kept",
  "Not on this saw",
];

/** Every cut piece, a row each, batch by batch in the order of work. */
export function cutsCsv(solved: SolvedPlan, takeoff: Takeoff): Generator<string> {
  return spreadsheet(COLUMNS, batchRows(groundOf(solved, [], takeoff, null)));
}

function* batchRows(ground: Ground): Generator<Cell[][]> {
  for (const { wall, batches } of allCuts(ground.takeoff.walls)) {
    for (const [i, batch] of batches.entries()) {
      const cells = batchCells(batch, ground.length, ground.both);
      const head = [wallTitle(ground, wall), i + 1];
      yield batch.labels.map((label) => [label, ...head, ...cells]);
    }
  }
}

type Print = (nm: Nm) => string;

function batchCells(batch: Batch, length: Print, both: Print): Cell[] {
  const { box, kind } = batch.cut;
  const [width, height] = [box.right - box.left, box.top - box.bottom];
  return [
    KIND_WORDS[kind],
    titleOf(batch.tile),
    length(width),
    toMillimetres(width),
    length(height),
    toMillimetres(height),
    cutSteps(batch, both).join("; "),
    sidesWords(batch.keeps),
    batch.beyondSaw.map(plainText).join("; "),
  ];
}
