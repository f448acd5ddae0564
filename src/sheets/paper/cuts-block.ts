import { counted } from "../../measure/index.js";
import { plainText } from "../../drawing/index.js";
import type { Batch, Mitre, WallCuts } from "../../takeoff/index.js";
import { NONE, tableOfSome, text } from "./blocks.js";
import { cutSteps, KIND_WORDS } from "./cut-words.js";
import type { Ground } from "./ground.js";
import { labelList } from "./label-list.js";
import type { Block } from "./paper.js";
import { andList, sidesWords, titleOf } from "./words.js";

const COLUMNS = [
  ">Batch",
  "Kind",
  "Set and cut",
  ">Count",
  "Factory edges kept",
  "Goes to",
] as const;

/** A wall's cuts in batches, each with its fence setting and where its pieces go. */
export function cutsBlocks(ground: Ground, cuts: WallCuts): Block[] {
  if (cuts.batches.length === 0) return [];
  const example = cuts.batches[0]!.labels[0]!;
  return [
    text(
      `${counted(cuts.pieces.filter(({ set }) => !set).length, "piece")} to cut. A label is wall, course from the bottom, place from ` +
        `the left: write it on the back before it leaves the saw, such as ${example}.`,
    ),
    ...mitreTexts(cuts, ground.length),
    ...cutsTable(ground, cuts),
  ];
}

/** The batches alone, without a word on labels; nothing where nothing is cut. */
export function cutsTable({ both }: Ground, { batches }: Pick<WallCuts, "batches">): Block[] {
  const several = new Set(batches.map((batch) => batch.tile)).size > 1;
  return tableOfSome(
    "Cuts, in the order of work",
    COLUMNS,
    batches.map((batch, i) => [
      `${i + 1}`,
      KIND_WORDS[batch.cut.kind] + (several ? ` of ${titleOf(batch.tile)}` : ""),
      stepsCell(batch, both),
      `${batch.labels.length}`,
      batch.keeps.length === 0 ? NONE : sidesWords(batch.keeps),
      labelList(batch.labels),
    ]),
  );
}

/** How many edges are mitred of each hand, and how long they are together; nothing where none is. */
function mitreTexts({ pieces }: WallCuts, length: Ground["length"]): Block[] {
  const mitres = pieces.flatMap(({ cut }) => cut.mitres);
  if (mitres.length === 0) return [];
  const hands = (["left", "right"] as const).flatMap((side) =>
    handWords(
      side,
      mitres.filter((mitre) => mitre.side === side),
      length,
    ),
  );
  return [
    text(
      `Mitred, seen from the front: ${andList(hands)}. Cut square first and mitre last, face up; ` +
        "the edge is thin, sharp, and breaks when anything leans on it.",
    ),
  ];
}

function handWords(side: string, mitres: readonly Mitre[], length: Ground["length"]): string[] {
  if (mitres.length === 0) return [];
  const all = mitres.reduce((sum, mitre) => sum + mitre.length, 0);
  return [`${counted(mitres.length, `${side} edge`)}, ${length(all)} in all`];
}

function stepsCell(batch: Batch, both: Ground["both"]): string {
  const beyond = batch.beyondSaw.map((words) => `Not on this saw: ${plainText(words)}`);
  return [...cutSteps(batch, both), ...beyond].join("; ");
}
