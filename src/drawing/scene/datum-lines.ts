import { boxesOverlap, makeLabel } from "../labels.js";
import { rounded } from "../picture.js";
import type { Label, PictureBox, RuledLine } from "../scene.js";
import type { Setting } from "./setting.js";

/** A line that a setter measures from, in parts where words stand in its way, and the name at its end. */
export interface DatumLine {
  readonly lines: readonly RuledLine[];
  readonly label: Label;
}

/** The words round a wall: beside it, and below it. */
export interface WordsRound {
  readonly beside: readonly Label[];
  readonly below: readonly Label[];
}

const NAME_SIZE = 0.85;
/** Between a line and the words that interrupt it, in ems. */
const CLEAR = 0.2;

/**
 * The level line runs past everything beside the wall (`columns` is all of it), so that its name stands clear; past the
 * words below it, too, where they come that near. Words beside a low course interrupt it.
 */
export function levelLine(
  bare: PictureBox,
  columns: PictureBox,
  { beside, below }: WordsRound,
  { em }: Setting,
): DatumLine {
  const end = columns.right + 0.6 * em;
  const nameFrom = (x: number): Label =>
    makeLabel({
      text: "level line",
      role: "caption",
      x: x + 0.4 * em,
      y: 0,
      size: NAME_SIZE * em,
      anchor: "start",
    });
  const near = below.filter(({ box }) => boxesOverlap(box, nameFrom(end).box));
  const to = Math.max(end, ...near.map(({ box }) => box.right + 0.6 * em));
  const gaps = [...beside, ...below]
    .filter(({ box }) => box.top < 0 && 0 < box.bottom)
    .map(({ box }) => [box.left - CLEAR * em, box.right + CLEAR * em] as const);
  const parts = brokenAt(bare.left - 0.9 * em, to, gaps);
  return {
    lines: parts.map(([a, b]) => ({ kind: "level", points: [a, 0, b, 0].map(rounded) })),
    label: nameFrom(to),
  };
}

/** The centre line runs from its name, which is over the wall, to below the wall; a narrow wall's captions interrupt it. */
export function centreLine(
  name: Label,
  bare: PictureBox,
  captions: readonly Label[],
  { em }: Setting,
): RuledLine[] {
  const { x: middle } = name;
  const gaps = captions
    .filter(({ box }) => box.left < middle && middle < box.right)
    .map(({ box }) => [box.top - CLEAR * em, box.bottom + CLEAR * em] as const);
  return brokenAt(name.box.bottom, bare.bottom + 0.5 * em, gaps).map(([a, b]) => ({
    kind: "centre",
    points: [middle, a, middle, b].map(rounded),
  }));
}

type Stretch = readonly [from: number, to: number];

/** What is left of a stretch between gaps. */
function brokenAt(from: number, to: number, gaps: readonly Stretch[]): Stretch[] {
  const parts: Stretch[] = [];
  let start = from;
  for (const [gapFrom, gapTo] of [...gaps].sort((a, b) => a[0] - b[0])) {
    if (gapTo <= start || gapFrom >= to) continue;
    if (gapFrom > start) parts.push([start, gapFrom]);
    start = gapTo;
  }
  if (start < to) parts.push([start, to]);
  return parts;
}
