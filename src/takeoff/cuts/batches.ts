import type { Side } from "../../model/index.js";
import type { Plan } from "../../model/index.js";
import type { Box } from "../../solver/index.js";
import type { Batch, CutPiece, PieceCut } from "../takeoff.js";
import { beyondSaw } from "./beyond-saw.js";

/** The order of work: straight cuts first, and mitres last, since their thin edge breaks in later work (common practice). */
const ORDER: readonly PieceCut["kind"][] = [
  "rip",
  "crosscut",
  "corner",
  "taper",
  "notch",
  "hole",
  "mitre",
];

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/**
 * The pieces of a wall by equal cuts, in the order of work; within a kind the widest setting of the
 * fence first, so that it moves one way. What has to stay is told for all pieces of a batch together.
 */
export function batchesOf(plan: Plan, pieces: readonly CutPiece[]): Batch[] {
  const alike = new Map<string, CutPiece[]>();
  for (const piece of pieces) {
    const key = cutKey(piece);
    const batch = alike.get(key);
    if (batch) batch.push(piece);
    else alike.set(key, [piece]);
  }
  return [...alike.values()]
    .sort((a, b) => inOrder(a[0]!, b[0]!))
    .map((batch) => batchOf(plan, batch));
}

function batchOf(plan: Plan, pieces: readonly CutPiece[]): Batch {
  const { tile, cut } = pieces[0]!;
  return {
    tile,
    cut,
    keeps: SIDES.filter((side) => pieces.some(({ factory }) => factory.includes(side))),
    labels: pieces.map(({ label }) => label),
    beyondSaw: beyondSaw(plan, tile, cut),
  };
}

function inOrder(a: CutPiece, b: CutPiece): number {
  const kinds = ORDER.indexOf(a.cut.kind) - ORDER.indexOf(b.cut.kind);
  return kinds || settingOf(b, 0) - settingOf(a, 0) || settingOf(b, 1) - settingOf(a, 1);
}

function settingOf({ cut }: CutPiece, n: number): number {
  return cut.fences[n]?.keep ?? 0;
}

/** What two pieces that are cut alike have in common: size, cuts, and which edges are the tile's. */
function cutKey({ tile, cut }: CutPiece): string {
  const { box, fences, tapers, notches, holes, mitres } = cut;
  const bites = notches.map((notch) => [notch.opens, from(box, notch.box)]);
  const drilled = holes.map((hole) => [
    hole.fromLeft - box.left,
    hole.fromBottom - box.bottom,
    hole.across,
  ]);
  const own = [
    box.left === 0,
    box.bottom === 0,
    box.right === tile.face.across,
    box.top === tile.face.up,
  ];
  const size = [box.right - box.left, box.top - box.bottom];
  return JSON.stringify([
    tile.name,
    size,
    own,
    fences.map(({ along, from: edge, keep }) => [along, edge, keep]),
    tapers.map((taper) => [taper.side, taper.from, taper.to, taper.first, taper.last]),
    bites,
    drilled,
    mitres.map(({ side, length }) => [side, length]),
  ]);
}

function from(origin: Box, box: Box): number[] {
  return [
    box.left - origin.left,
    box.bottom - origin.bottom,
    box.right - origin.left,
    box.top - origin.bottom,
  ];
}
