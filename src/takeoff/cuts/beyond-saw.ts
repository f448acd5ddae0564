import { formatLength, type Nm } from "../../measure/index.js";
import type { Plan, Tile } from "../../model/index.js";
import type { PieceCut } from "../takeoff.js";

/**
 * What the plan's saw can't do of a cut, in words; none when the plan names no saw. That a round blade
 * leaves an inside corner unfinished, and makes no round hole, is common practice.
 */
export function beyondSaw({ saw, units }: Plan, tile: Tile, cut: PieceCut): string[] {
  if (!saw) return [];
  const words: string[] = [];
  const longest = Math.max(0, ...cutLengths(tile, cut));
  if (saw.longest !== null && longest > saw.longest) {
    const [cutLength, most] = [longest, saw.longest].map((nm) => formatLength(nm, units));
    words.push(`the cut is ${cutLength} long, the saw cuts ${most} at most`);
  }
  if (cut.notches.some((notch) => notch.opens.length > 0)) {
    words.push(
      "the blade can't finish the notch's inside corners: stop short, finish with a grinder",
    );
  }
  if (cut.notches.some((notch) => notch.opens.length === 0)) {
    words.push("the blade can't begin inside a tile: drill the corners, cut out with a grinder");
  }
  if (cut.holes.length > 0) words.push("a round hole is drilled, not sawn");
  return words;
}

/** How long each straight cut is, mitres too: a rip goes first and leaves the crosscut less to do. */
function cutLengths({ face }: Tile, { box, fences, tapers, mitres }: PieceCut): Nm[] {
  const isRipped = fences.some(({ along }) => along === "up");
  const straight = fences.map(({ along }) => {
    if (along === "up") return face.across;
    return isRipped ? box.top - box.bottom : face.up;
  });
  const sloped = tapers.map(({ from, to, first, last }) =>
    Math.round(Math.hypot(to - from, last - first)),
  );
  return [...straight, ...sloped, ...mitres.map(({ length }) => length)];
}
