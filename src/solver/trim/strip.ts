import { divideRounded, type Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import { fromLowest, tidyRing } from "../clip/ring.js";
import { subtract } from "../clip/subtract.js";
import { doubleArea, doubleShapeArea, type Ring, type Shape } from "../shape.js";
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
  const laid = stretches.flatMap((stretch) => piecesOf(strip, stretch));
  return {
    along: strip.along,
    side: strip.side,
    pieces: laid.map(({ piece }) => piece),
    length: laid.length === 0 ? 0 : spanOf(laid.map(({ reach }) => reach)),
    joints: [...gaps.map((gap) => ringAt(strip, rectangle(strip, gap))), ...strip.mitreJoints],
  };
}

/** A piece, and from where to where along the run it reaches, as `placeAlong` counts. */
interface LaidPiece {
  readonly piece: TrimPiece;
  readonly reach: Stretch;
}

function piecesOf(strip: Strip, stretch: Stretch): LaidPiece[] {
  const cuts = [...mitresOver(strip, stretch), ...strip.cuts];
  if (cuts.length === 0 && isStraight(strip)) return [plainPiece(strip, stretch)];
  const outline = tidyRing(ringAt(strip, rectangle(strip, laidOut(strip, stretch))));
  if (!outline) return [];
  const subject = { outline, holes: [] };
  const shapes = cuts.length > 0 ? subtract(subject, cuts) : [subject];
  return shapes.map((shape) => {
    const { outer, inner } = reachesOf(strip, shape.outline);
    const reach = { from: Math.min(outer.from, inner.from), to: Math.max(outer.to, inner.to) };
    const mitre = slantedEnds(strip, outer, inner);
    const whole = isFull(strip, stretch) && isUncut(strip, stretch, shape);
    return { piece: { shape, length: reach.to - reach.from, mitre, whole }, reach };
  });
}

/** Whether a strip runs level or upright, without a bend and no longer than it is. */
function isStraight({ bends, overrun, direction: [dx, dy] }: Strip): boolean {
  return bends.length === 0 && overrun === 0 && (dx === 0 || dy === 0);
}

/** A length of a straight strip that nothing cuts: most are. The same piece as any other way. */
function plainPiece(strip: Strip, stretch: Stretch): LaidPiece {
  const outline = fromLowest(ringAt(strip, rectangle(strip, stretch)));
  const length = stretch.to - stretch.from;
  const [x, y] = strip.place(stretch.from, 0);
  const from = placeAlong(strip, x, y);
  const piece = {
    shape: { outline, holes: [] },
    length,
    mitre: [],
    whole: isFull(strip, stretch),
  };
  return { piece, reach: { from, to: from + length } };
}

/** What the mitres at a strip's ends leave out of one of its lengths. */
function mitresOver(strip: Strip, { from, to }: Stretch): Ring[] {
  const { length, mitreStart, mitreEnd } = strip;
  const atStart = mitreStart !== 0 && from < reachOf(strip, mitreStart);
  const atEnd = mitreEnd !== 0 && to > length - reachOf(strip, mitreEnd);
  if (!atStart && !atEnd) return [];
  return [
    ...(atStart ? [ringAt(strip, startMitre(strip))] : []),
    ...(atEnd ? [ringAt(strip, endMitre(strip))] : []),
  ];
}

function isFull({ piece }: Strip, { from, to }: Stretch): boolean {
  return to - from === piece;
}

/** Whether nothing was cut off a length. Along a slope corners are rounded, so that one isn't quite its size either. */
function isUncut(strip: Strip, stretch: Stretch, shape: Shape): boolean {
  return doubleShapeArea(shape) === doubleArea(ringAt(strip, rectangle(strip, stretch)));
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
function slantedEnds({ side, bends }: Strip, outer: Stretch, inner: Stretch): TrimPiece["mitre"] {
  // Along a measured side trim follows the readings, each end cut square to the wall.
  if (bends.length > 0) return [];
  const [start, end] = side === "left" || side === "right" ? END_NAMES.upright : END_NAMES.level;
  const isAbreast = (one: Nm, other: Nm): boolean => Math.abs(one - other) <= SQUARE_WITHIN;
  return [
    ...(isAbreast(outer.from, inner.from) ? [] : [start]),
    ...(isAbreast(outer.to, inner.to) ? [] : [end]),
  ];
}

/** From where to where along the run a ring's corners lie, those of its outer half and those of its inner one. */
function reachesOf(strip: Strip, ring: Ring): { outer: Stretch; inner: Stretch } {
  const { width, direction } = strip;
  const [x0, y0] = strip.place(0, 0);
  const [dx, dy] = direction;
  const run = Math.hypot(dx, dy);
  const outer = { from: Infinity, to: -Infinity };
  const inner = { from: Infinity, to: -Infinity };
  for (let i = 0; i < ring.length; i += 2) {
    const x = ring[i]!;
    const y = ring[i + 1]!;
    const isInner = 2 * Math.abs(((x - x0) * dy - (y - y0) * dx) / run) > width;
    const half = isInner ? inner : outer;
    const along = placeAlong(strip, x, y);
    half.from = Math.min(half.from, along);
    half.to = Math.max(half.to, along);
  }
  return { outer, inner };
}

/** How far along the run a place lies, from the wall's own corner; rounded once. */
function placeAlong({ direction: [dx, dy] }: Strip, x: Nm, y: Nm): Nm {
  return Math.round((x * dx + y * dy) / Math.hypot(dx, dy));
}

/** From the first of some reaches to the last. */
function spanOf(reaches: readonly Stretch[]): Nm {
  const from = Math.min(...reaches.map((reach) => reach.from));
  const to = Math.max(...reaches.map((reach) => reach.to));
  return to - from;
}

/** How far a mitred end stands back along the run, so that the joint square to the cut is true; half of it each. */
function mitreGap({ joint, width }: Strip, lean: Nm): Nm {
  return divideRounded(joint * Math.hypot(lean, width), 2 * width);
}

function rectangle({ width, bends }: Strip, { from, to }: Stretch): Ring {
  if (bends.length === 0) return [from, 0, to, 0, to, width, from, width];
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
  const turnsOver = strip.side === "left" || strip.side === "top";
  const placed: Nm[] = [];
  for (let i = 0; i < ring.length; i += 2) {
    const from = turnsOver ? ring.length - 2 - i : i;
    const at = strip.place(ring[from]!, ring[from + 1]!);
    placed.push(at[0], at[1]);
  }
  return placed;
}

function turned(ring: Ring): Ring {
  const points: Nm[] = [];
  for (let i = ring.length - 2; i >= 0; i -= 2) points.push(ring[i]!, ring[i + 1]!);
  return points;
}
