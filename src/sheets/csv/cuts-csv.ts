import { plainText } from "../../drawing/index.js";
import { type Nm, toMillimetres } from "../../measure/index.js";
import type { SolvedPlan } from "../../solver/index.js";
import type { Batch, Takeoff, WallCuts } from "../../takeoff/index.js";
import { cutSteps, KIND_WORDS } from "../paper/cut-words.js";
import { groundOf } from "../paper/ground.js";
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
export function cutsCsv(solved: SolvedPlan, takeoff: Takeoff): string {
  const ground = groundOf(solved, [], takeoff, null);
  const rows = takeoff.walls.flatMap((wall: WallCuts) =>
    wall.batches.flatMap((batch, i) => {
      const cells = batchCells(batch, ground.length, ground.both);
      return batch.labels.map((label): Cell[] => [
        label,
        wallTitle(ground, wall.wall),
        i + 1,
        ...cells,
      ]);
    }),
  );
  return spreadsheet(COLUMNS, rows);
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
