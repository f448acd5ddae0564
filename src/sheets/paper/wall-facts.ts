import { plainText } from "../../drawing/index.js";
import { scaleRounded } from "../../measure/index.js";
import { moduleAcross, type SolvedLay, type SolvedWall } from "../../solver/index.js";
import { exactJointWords } from "../spacer-words.js";
import type { Ground } from "./ground.js";
import type { Table } from "./paper.js";
import { table } from "./blocks.js";
import { bondWords, edgeWords, startWords, titleOf } from "./words.js";

/** What a wall is laid with, one fact a row. */
export function wallFacts(ground: Ground, { wall, lays }: SolvedWall, mark: string): Table {
  const { length, revision, solved } = ground;
  const { edges, size } = wall;
  return table(
    "What is set",
    ["What", "Figure"],
    [
      ["Wall", `${titleOf(wall)}, marked ${mark} in labels`],
      ["Seen", "from the room, facing the wall; left and right as you see them"],
      ["Plan", plainText(solved.plan.title) || "untitled"],
      ...(revision === null ? [] : [["Revision", plainText(revision)]]),
      ["Bare wall", `${length(size.across)} across x ${length(size.up)} up`],
      ...lays.flatMap((lay) => [
        ...(lays.length > 1 ? [["Lay", plainText(lay.lay.name)]] : []),
        ...layFacts(ground, lay),
      ]),
      ["Left", edgeWords(ground, edges.left)],
      ["Right", edgeWords(ground, edges.right)],
      ["Bottom", edgeWords(ground, edges.bottom)],
      ["Top", edgeWords(ground, edges.top)],
    ],
  );
}

function layFacts(ground: Ground, laid: SolvedLay): string[][] {
  const { length, solved } = ground;
  const { tile, bond } = laid.lay;
  const lot = tile.lot === null ? [] : [["Lot", plainText(tile.lot)]];
  const turned = tile.directional ? ["may not be turned"] : [];
  const edges = tile.edges === null ? [] : [`${tile.edges} edges`];
  return [
    ["Tile", titleOf(tile)],
    [
      "Real face",
      [
        `${length(tile.face.across)} across x ${length(tile.face.up)} up, ${length(tile.thickness)} thick`,
        ...edges,
        ...turned,
      ].join(", "),
    ],
    ...lot,
    ["Joint", jointWords(laid, ground)],
    ["Bond", bondWords(bond) + offsetWords(ground, laid)],
    ["Start", startWords(laid, ground)],
    [
      "Bed",
      `${length(solved.plan.bed)} after embedding; with the tile ${length(solved.plan.bed + tile.thickness)}`,
    ],
  ];
}

function jointWords(laid: SolvedLay, { length, solved }: Ground): string {
  const exact = exactJointWords(laid, solved.plan.units);
  return length(laid.joint) + (exact ? `: ${exact}` : "");
}

function offsetWords({ length }: Ground, { lay, lattice }: SolvedLay): string {
  if (lay.bond.kind === "stack") return "";
  const { p, q } = lay.bond;
  const shift = scaleRounded(moduleAcross(lattice), p, q);
  return `: each course ${length(shift)} to the right of the one under it, from course 1 again after ${q}`;
}
