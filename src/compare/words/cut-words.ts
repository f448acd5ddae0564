import type { CutPiece, Range } from "../comparison.js";
import type { Lengths } from "./lengths.js";

/** Of two rectangles, only the side that differs; else the whole of both. */
export function bothCuts(before: CutPiece, after: CutPiece, lengths: Lengths): [string, string] {
  const plain = isPlain(before) && isPlain(after);
  const sameWidth = sameRange(before.width, after.width);
  const sameHeight = sameRange(before.height, after.height);
  const whole = before.cut === "none" || after.cut === "none";
  const told = (piece: CutPiece): string => {
    if (piece.cut === "none") return "whole";
    if (plain && (whole ? piece.cut === "rip" : sameWidth))
      return `${lengths.range(piece.height)} high`;
    if (plain && (whole ? piece.cut === "end" : sameHeight))
      return `${lengths.range(piece.width)} wide`;
    return cutWords(piece, lengths);
  };
  return [told(before), told(after)];
}

/** `3 in wide`, `L cut 6 in x 3 in less 1 in x 2 in`. */
export function cutWords(piece: CutPiece, lengths: Lengths): string {
  const size = `${lengths.range(piece.width)} x ${lengths.range(piece.height)}`;
  switch (piece.cut) {
    case "none":
      return "whole";
    case "end":
      return `${lengths.range(piece.width)} wide`;
    case "rip":
      return `${lengths.range(piece.height)} high`;
    case "corner":
      return size;
    case "notch": {
      const { across, up } = piece.notch ?? { across: 0, up: 0 };
      return `L cut ${size} less ${lengths.length(across)} x ${lengths.length(up)}`;
    }
    case "slot":
      return `U cut ${size}`;
    case "scribe":
      return `scribed ${size}`;
    case "hole":
      return `${size} with its hole`;
  }
}

function isPlain({ cut }: CutPiece): boolean {
  return cut === "none" || cut === "end" || cut === "rip" || cut === "corner";
}

function sameRange(a: Range, b: Range): boolean {
  return a.least === b.least && a.most === b.most;
}
