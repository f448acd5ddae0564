import { type Nm, toMillimetres } from "../measure/index.js";
import { findingJson } from "../sheets/index.js";
import type {
  Comparison,
  CutPiece,
  Fact,
  PieceChanges,
  Range,
  Shift,
  Value,
  WallComparison,
  WallReading,
} from "./comparison.js";
import { headline } from "./summary.js";
import { isEmpty, wallChanged } from "./totals.js";

/**
 * A comparison as plain JSON: lengths in millimetres, exact to the nanometre. Walls on which nothing
 * changed are left out. `shownPath` is how the host names a file to the reader.
 */
export function comparisonJson(
  comparison: Comparison,
  shownPath: (file: string) => string,
): Record<string, unknown> {
  const { title, units, parts, facts, walls, findings, quantities } = comparison;
  const shown = (found: Parameters<typeof findingJson>[0] | null) =>
    found && findingJson(found, shownPath);
  return {
    title,
    units,
    changed: !isEmpty(comparison),
    headline: headline(comparison),
    parts,
    facts: facts.map(factJson),
    walls: walls.filter(wallChanged).map(wallJson),
    findings: findings.map(({ before, after }) => ({ before: shown(before), after: shown(after) })),
    quantities: quantities.map((each) => {
      const { before, after } = "pieces" in each ? each.pieces : each.amount;
      return { ...each, difference: after - before };
    }),
  };
}

function wallJson(wall: WallComparison): object {
  const { name, title, parts, facts, shift, anew, pieces, onWall, reading, alignments } = wall;
  return {
    name,
    title,
    parts,
    facts: facts.map(factJson),
    shift: shift && { up: mm(shift.up), across: shift.across.map(mm) },
    anew,
    pieces: piecesJson(pieces),
    ...(onWall.before.length + onWall.after.length > 0 ? { onWall } : {}),
    reading: { before: readingJson(reading.before), after: readingJson(reading.after) },
    alignments,
  };
}

function factJson({ subject, name, which, before, after }: Fact): object {
  return {
    subject,
    name,
    ...(which !== null && { which: typeof which === "number" ? mm(which) : which }),
    before: before && valueJson(before),
    after: after && valueJson(after),
  };
}

function valueJson(value: Value): unknown {
  switch (value.kind) {
    case "length":
      return mm(value.nm);
    case "size":
      return [mm(value.across), mm(value.up)];
    case "place":
      return [mm(value.x), mm(value.y)];
    case "count":
      return value.count;
    case "amount":
      return value.whole;
    case "words":
      return value.words;
  }
}

function piecesJson({ kept, moved, recut, fresh, gone }: PieceChanges): object {
  const several = ({ count, piece, courses }: PieceChanges["fresh"][number]) => ({
    count,
    piece: cutJson(piece),
    courses,
  });
  return {
    kept,
    moved: moved.map(({ by, count }) => ({ by: shiftJson(by), count })),
    recut: recut.map(({ count, before, after, courses }) => ({
      count,
      before: cutJson(before),
      after: cutJson(after),
      courses,
    })),
    new: fresh.map(several),
    gone: gone.map(several),
  };
}

function cutJson({ cut, width, height, notch, place }: CutPiece): object {
  const range = ({ least, most }: Range) => [mm(least), mm(most)];
  return {
    cut,
    width: range(width),
    height: range(height),
    ...(notch && { notch: [mm(notch.across), mm(notch.up)] }),
    place,
  };
}

function readingJson(reading: WallReading | null): object | null {
  if (!reading) return null;
  const { smallest } = reading;
  return { ...reading, smallest: smallest && [mm(smallest.width), mm(smallest.height)] };
}

function shiftJson({ across, up }: Shift): object {
  return { across: mm(across), up: mm(up) };
}

function mm(nm: Nm): number {
  return toMillimetres(nm);
}
