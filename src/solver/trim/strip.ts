import { divideRounded, type Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import { tidyRing } from "../clip/ring.js";
import { subtract } from "../clip/subtract.js";
import { doubleArea, doubleShapeArea, type Ring } from "../shape.js";
import type { TrimPiece, TrimRun } from "../solved.js";
import { splitRun, type Stretch } from "./split-run.js";

/** A run of trim to be divided: where it lies, and how its ends are finished. */
export interface Strip {
  readonly along: TrimRun["along"];
  readonly side: Side;
  readonly length: Nm;
  /** Across the trim, from its outer edge. */
  readonly width: Nm;
  /** Full length of the trim, and the joint between lengths. */
  readonly piece: Nm;
  readonly joint: Nm;
  /**
   * How far the inner edge begins and ends further in than the outer one: the width at a mitre of 45 degrees,
   * less than nothing where the run turns away from the tile; 0 where an end is square.
   */
  readonly mitreStart: Nm;
  readonly mitreEnd: Nm;
  /** Where along the run the side that it follows bends, in rising order. */
  readonly bends: readonly Nm[];
  /** What is in the way of it, as anticlockwise rings on the wall. */
  readonly cuts: readonly Ring[];
  /**
   * By how much further it is laid out at its ends, where something cuts it: rounded along a slope, a cut through its very
   * corner could miss it.
   */
  readonly overrun: Nm;
  /** The joints in the mitres at its ends, this run's half of each, as rings on the wall. */
  readonly mitreJoints: readonly Ring[];
  /** Where the run goes: rightwards and up, of any length. */
  readonly direction: readonly [Nm, Nm];
  /** A place in the run (along it, in from its outer edge) as a place on the wall. */
  readonly place: (along: Nm, inward: Nm) => readonly [Nm, Nm];
}

/** What a strip has that is cut square at both ends, and is straight unless it says otherwise. */
export const SQUARE_ENDS = {
  mitreStart: 0,
  mitreEnd: 0,
  bends: [],
  overrun: 0,
  mitreJoints: [],
} as const satisfies Partial<Strip>;

/** Divides a strip into pieces; mitred ends are cut back so that the joint's true width is between them. */
export function layStrip(strip: Strip): TrimRun {
  const stretches = splitRun(strip.length, strip.piece, strip.joint);
  const gaps = stretches.slice(1).map((next, i) => ({ from: stretches[i]!.to, to: next.from }));
  const pieces = stretches.flatMap((stretch) => piecesOf(strip, stretch));
  const ends = pieces.flatMap(({ shape }) => placesAlong(strip, shape.outline));
  return {
    along: strip.along,
    side: strip.side,
    pieces,
    length: ends.length === 0 ? 0 : spanOf(ends),
    joints: [...gaps.map((gap) => ringAt(strip, rectangle(strip, gap))), ...strip.mitreJoints],
  };
}

function piecesOf(strip: Strip, stretch: Stretch): TrimPiece[] {
  const { length } = strip;
  const mitreStart =
    strip.mitreStart !== 0 && stretch.from < reachOf(strip, strip.mitreStart)
      ? [ringAt(strip, startMitre(strip))]
      : [];
  const mitreEnd =
    strip.mitreEnd !== 0 && stretch.to > length - reachOf(strip, strip.mitreEnd)
      ? [ringAt(strip, endMitre(strip))]
      : [];
  const cuts = [...mitreStart, ...mitreEnd, ...strip.cuts];
  const outline = tidyRing(ringAt(strip, rectangle(strip, laidOut(strip, stretch))));
  if (!outline) return [];
  // Along a slope corners are rounded, so that a length that nothing cuts isn't quite its size either.
  const uncut = doubleArea(ringAt(strip, rectangle(strip, stretch)));
  const subject = { outline, holes: [] };
  const shapes = cuts.length > 0 ? subtract(subject, cuts) : [subject];
  const isFull = stretch.to - stretch.from === strip.piece;
  return shapes.map((shape) => ({
    shape,
    length: spanOf(placesAlong(strip, shape.outline)),
    mitre: slantedEnds(strip, shape.outline),
    whole: isFull && doubleShapeArea(shape) === uncut,
  }));
}

/** A strip as far as it goes, before anything is cut off it. */
export function wholeOf(strip: Strip): Ring {
  return ringAt(strip, rectangle(strip, laidOut(strip, { from: 0, to: strip.length })));
}

/** A stretch with what it is laid out further at the strip's ends. */
function laidOut({ length, overrun }: Strip, { from, to }: Stretch): Stretch {
  return { from: from === 0 ? -overrun : from, to: to === length ? to + overrun : to };
}

/** What the mitres at a strip's ends leave out. */
export function mitreRings(strip: Strip): Ring[] {
  return [
    ...(strip.mitreStart === 0 ? [] : [ringAt(strip, startMitre(strip))]),
    ...(strip.mitreEnd === 0 ? [] : [ringAt(strip, endMitre(strip))]),
  ];
}

/** Up to where a mitre may cut into a length. */
function reachOf(strip: Strip, lean: Nm): Nm {
  return Math.abs(lean) + mitreGap(strip, lean);
}

const END_NAMES = {
  level: ["left", "right"],
  upright: ["bottom", "top"],
} as const;

/** Cut corners are rounded to the nanometre: an end is slanted by more than that. */
const SQUARE_WITHIN: Nm = 3;

/** The ends of a piece that are no square cut: where its outer and its inner edge don't end abreast. */
function slantedEnds(strip: Strip, outline: Ring): TrimPiece["mitre"] {
  const { side, width, direction, bends } = strip;
  // Along a measured side trim follows the readings, each end cut square to the wall.
  if (bends.length > 0) return [];
  const [x0, y0] = strip.place(0, 0);
  const [dx, dy] = direction;
  const run = Math.hypot(dx, dy);
  const along = placesAlong(strip, outline);
  const isInner = (i: number): boolean => {
    const [x, y] = [outline[2 * i]! - x0, outline[2 * i + 1]! - y0];
    return 2 * Math.abs((x * dy - y * dx) / run) > width;
  };
  const outer = along.filter((_, i) => !isInner(i));
  const inner = along.filter((_, i) => isInner(i));
  const [start, end] = side === "left" || side === "right" ? END_NAMES.upright : END_NAMES.level;
  const isSlanted = (pick: (...places: Nm[]) => Nm): boolean =>
    !(Math.abs(pick(...outer) - pick(...inner)) <= SQUARE_WITHIN);
  return [...(isSlanted(Math.min) ? [start] : []), ...(isSlanted(Math.max) ? [end] : [])];
}

/** How far along the run each corner of a ring lies, from the wall's own corner; rounded once. */
function placesAlong({ direction: [dx, dy] }: Strip, ring: Ring): Nm[] {
  const run = Math.hypot(dx, dy);
  return ring.flatMap((x, i) =>
    i % 2 === 0 ? [Math.round((x * dx + ring[i + 1]! * dy) / run)] : [],
  );
}

function spanOf(places: readonly Nm[]): Nm {
  return Math.max(...places) - Math.min(...places);
}

/** How far a mitred end stands back along the run, so that the joint square to the cut is true; half of it each. */
function mitreGap({ joint, width }: Strip, lean: Nm): Nm {
  return divideRounded(joint * Math.hypot(lean, width), 2 * width);
}

function rectangle({ width, bends }: Strip, { from, to }: Stretch): Ring {
  const along = [from, ...bends.filter((bend) => bend > from && bend < to), to];
  const outer = along.flatMap((place) => [place, 0]);
  const inner = along.reverse().flatMap((place) => [place, width]);
  return [...outer, ...inner];
}

/**
 * What a mitre leaves out, past both edges of the strip, so that it never runs along one of them: along a slope both are
 * rounded.
 */
function startMitre(strip: Strip): Ring {
  const { width, mitreStart: lean } = strip;
  const { outer, inner } = mitreLine(lean, mitreGap(strip, lean));
  const further = inner - outer;
  const far = -width - Math.abs(further);
  return [far, -width, outer - further, -width, inner + further, 2 * width, far, 2 * width];
}

function endMitre(strip: Strip): Ring {
  const { length, width, mitreEnd: lean } = strip;
  const { outer, inner } = mitreLine(lean, mitreGap(strip, lean));
  const further = inner - outer;
  const far = length + width + Math.abs(further);
  const [low, high] = [length - outer + further, length - inner - further];
  return [low, -width, far, -width, far, 2 * width, high, 2 * width];
}

/** How far before a strip's end a mitre is at its outer and at its inner edge, so far back from the mitre itself. */
function mitreLine(lean: Nm, back: Nm): { outer: Nm; inner: Nm } {
  return { outer: back + Math.max(0, -lean), inner: back + Math.max(0, lean) };
}

/** This strip's half of the joints in the mitres at its ends, on the wall. */
export function mitreJoints(strip: Strip): Ring[] {
  const { length, width, mitreStart, mitreEnd } = strip;
  const half = (lean: Nm, place: (from: Nm) => Nm): Ring => {
    const [line, end] = [mitreLine(lean, 0), mitreLine(lean, mitreGap(strip, lean))];
    const at = (from: Nm, inward: Nm): Ring => [place(from), inward];
    return [
      ...at(line.outer, 0),
      ...at(end.outer, 0),
      ...at(end.inner, width),
      ...at(line.inner, width),
    ];
  };
  return [
    ...(mitreStart === 0 ? [] : [half(mitreStart, (from) => from)]),
    ...(mitreEnd === 0 ? [] : [turned(half(mitreEnd, (from) => length - from))]),
  ].map((ring) => ringAt(strip, ring));
}

/** A ring of the run on the wall, anticlockwise whichever way the side turns it. */
function ringAt(strip: Strip, ring: Ring): Ring {
  const points: (readonly [Nm, Nm])[] = [];
  for (let i = 0; i < ring.length; i += 2) points.push(strip.place(ring[i]!, ring[i + 1]!));
  const turnsOver = strip.side === "left" || strip.side === "top";
  return (turnsOver ? points.reverse() : points).flat();
}

function turned(ring: Ring): Ring {
  const points: Nm[] = [];
  for (let i = ring.length - 2; i >= 0; i -= 2) points.push(ring[i]!, ring[i + 1]!);
  return points;
}
