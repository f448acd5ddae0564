import type { Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import { boundsOf, type Ring } from "../shape.js";
import { tidyRing } from "../clip/ring.js";
import { subtract } from "../clip/subtract.js";
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
  readonly mitreStart: boolean;
  readonly mitreEnd: boolean;
  /** Where along the run the side that it follows bends, in rising order. */
  readonly bends: readonly Nm[];
  /** A place in the run (along it, in from its outer edge) as a place on the wall. */
  readonly place: (along: Nm, inward: Nm) => readonly [Nm, Nm];
}

/** Divides a strip into pieces; mitred ends are cut back so that the joint's true width is between them. */
export function layStrip(strip: Strip): TrimRun {
  const stretches = splitRun(strip.length, strip.piece, strip.joint);
  const gaps = stretches.slice(1).map((next, i) => ({ from: stretches[i]!.to, to: next.from }));
  return {
    along: strip.along,
    side: strip.side,
    pieces: stretches.flatMap((stretch) => piecesOf(strip, stretch)),
    joints: gaps.map((gap) => boundsOf(ringAt(strip, rectangle(strip, gap)))),
  };
}

function piecesOf(strip: Strip, stretch: Stretch): TrimPiece[] {
  const { side, length, width } = strip;
  const [start, end] = side === "left" || side === "right" ? END_NAMES.upright : END_NAMES.level;
  const mitreStart = strip.mitreStart && stretch.from < width + mitreGap(strip.joint);
  const mitreEnd = strip.mitreEnd && stretch.to > length - width - mitreGap(strip.joint);
  const cuts = [
    ...(mitreStart ? [ringAt(strip, startMitre(strip))] : []),
    ...(mitreEnd ? [ringAt(strip, endMitre(strip))] : []),
  ];
  const outline = tidyRing(ringAt(strip, rectangle(strip, stretch)));
  if (!outline) return [];
  const subject = { outline, holes: [] };
  const shapes = cuts.length > 0 ? subtract(subject, cuts) : [subject];
  return shapes.map((shape) => ({
    shape,
    mitre: [...(mitreStart ? [start] : []), ...(mitreEnd ? [end] : [])],
    whole: cuts.length === 0 && stretch.to - stretch.from === strip.piece,
  }));
}

const END_NAMES = {
  level: ["left", "right"],
  upright: ["bottom", "top"],
} as const;

/** How far each mitred end stands back along the run, so that the joint square to the cut is true. */
function mitreGap(joint: Nm): Nm {
  return Math.round(joint * Math.SQRT1_2);
}

function rectangle({ width, bends }: Strip, { from, to }: Stretch): Ring {
  const along = [from, ...bends.filter((bend) => bend > from && bend < to), to];
  const outer = along.flatMap((place) => [place, 0]);
  const inner = along.reverse().flatMap((place) => [place, width]);
  return [...outer, ...inner];
}

function startMitre({ width, joint }: Strip): Ring {
  const back = mitreGap(joint);
  return [-width, 0, back, 0, back + width, width, -width, width];
}

function endMitre({ length, width, joint }: Strip): Ring {
  const back = length - mitreGap(joint);
  return [back, 0, length + width, 0, length + width, width, back - width, width];
}

/** A ring of the run on the wall, anticlockwise whichever way the side turns it. */
function ringAt(strip: Strip, ring: Ring): Ring {
  const points: (readonly [Nm, Nm])[] = [];
  for (let i = 0; i < ring.length; i += 2) points.push(strip.place(ring[i]!, ring[i + 1]!));
  const turnsOver = strip.side === "left" || strip.side === "top";
  return (turnsOver ? points.reverse() : points).flat();
}
