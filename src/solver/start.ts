import { divideRounded, type Nm } from "../measure/index.js";
import type { CarriedStart, Centre, Lay, OwnStart, UpStart, Wall } from "../model/index.js";
import type { Box } from "./box.js";
import { rangeBetween } from "./chain.js";
import type { Region } from "./solved.js";

/** What a start is worked out from. */
export interface Ground {
  readonly wall: Wall;
  readonly region: Region;
  readonly lay: Pick<Lay, "tile">;
  readonly joint: Nm;
}

/** A start across that can be worked out from its own wall; one that was carried has its place. */
export type SettledStart =
  | OwnStart
  /** `x` is the left edge of one tile of course 1. */
  | (CarriedStart & { readonly x: Nm });

/** A lay whose start across, where it is stated, is settled. */
export type SettledLay = Lay & { readonly across: SettledStart | null };

/** A lay as far as its own wall goes: a start that waits for another wall is left open. */
export function asSettled(lay: Lay): SettledLay {
  const { across } = lay;
  const waits = across !== null && "wall" in across && !isSettled(across);
  return { ...lay, across: waits ? null : across };
}

function isSettled(across: CarriedStart): across is CarriedStart & { readonly x: Nm } {
  return "x" in across;
}

/** The left edge of one tile of course 1. */
export function acrossOrigin(ground: Ground, start: SettledStart): Nm {
  const { region, joint } = ground;
  if ("x" in start) return start.x;
  const face = ground.lay.tile.face.across;
  if (start.kind === "full-tile") {
    return start.from === "left" ? region.bounds.left : region.bounds.right - face;
  }
  const centre = doubledCentre(ground.wall, start.centre);
  if (start.kind === "tile") return divideRounded(centre - face, 2);
  return divideRounded(centre - joint, 2) + joint;
}

/** The bottom of one course. */
export function upOrigin(ground: Ground, start: UpStart): Nm {
  const { region, joint } = ground;
  const face = ground.lay.tile.face.up;
  switch (start.kind) {
    case "joint":
      return start.y - Math.floor(joint / 2) + joint;
    case "at-opening": {
      const box = region.takeaways.find((t) => t.opening === start.opening)?.box;
      if (!box) return region.bounds.bottom;
      return start.relation === "over" ? box.top : box.bottom - face;
    }
    case "full-course":
      return start.from === "bottom" ? lowestPoint(region) : highestPoint(region) - face;
  }
}

/** Twice the middle of what a start is centred on, so that half a nanometre is not lost. */
export function doubledCentre(wall: Wall, centre: Centre): Nm {
  switch (centre.on) {
    case "wall":
      return wall.size.across;
    case "opening":
      return 2 * centre.opening.at.x + centre.opening.size.across;
    case "place":
      return 2 * centre.x;
  }
}

const LOWEST = new WeakMap<Region, Nm>();
const HIGHEST = new WeakMap<Region, Nm>();

/** The lowest point of the region; what a door takes from the bottom doesn't count, nor do legs. */
export function lowestPoint(region: Region): Nm {
  const known = LOWEST.get(region) ?? Math.min(...lineRuns(region, "bottom").map(({ low }) => low));
  LOWEST.set(region, known);
  return known;
}

/** The highest point of the region; what an opening takes from the top doesn't count. */
export function highestPoint(region: Region): Nm {
  const known = HIGHEST.get(region) ?? Math.max(...lineRuns(region, "top").map(({ high }) => high));
  HIGHEST.set(region, known);
  return known;
}

/** How low and high the bottom or the top runs in each stretch that no opening takes, along its steps too. */
function lineRuns(region: Region, side: "bottom" | "top"): { low: Nm; high: Nm }[] {
  const steps = region.steps.filter((step) => isPast(step, region.bounds, side));
  return clearRuns(region, side).flatMap(([from, to]) => {
    const turns = steps.flatMap(({ left, right }) => [left, right]);
    const places = [from, ...turns.filter((x) => x > from && x < to), to].sort((a, b) => a - b);
    return places.slice(1).map((end, i) => {
      const start = places[i]!;
      const over = steps.filter(({ left, right }) => left < end && right > start);
      const { low, high } = rangeBetween(region[side], start, end);
      if (side === "bottom") {
        const step = Math.max(...over.map(({ top }) => top));
        return { low: Math.max(low, step), high: Math.max(high, step) };
      }
      const step = Math.min(...over.map(({ bottom }) => bottom));
      return { low: Math.min(low, step), high: Math.min(high, step) };
    });
  });
}

/** Whether a box takes from the bottom or the top of a region. */
function isPast(box: Box, bounds: Box, side: "bottom" | "top"): boolean {
  return side === "bottom"
    ? box.bottom <= bounds.bottom && box.top > bounds.bottom
    : box.top >= bounds.top && box.bottom < bounds.top;
}

/** The stretches of the bottom (between legs) or top that no opening takes; all of it where openings take it all. */
export function clearRuns(
  { bounds, takeaways, between }: Region,
  side: "bottom" | "top",
): readonly (readonly [Nm, Nm])[] {
  const boxes = takeaways
    .map((takeaway) => takeaway.box)
    .filter((box) => isPast(box, bounds, side))
    .sort((a, b) => a.left - b.left);
  const runs: [Nm, Nm][] = [];
  const first = side === "bottom" ? Math.max(bounds.left, between.left) : bounds.left;
  const last = side === "bottom" ? Math.min(bounds.right, between.right) : bounds.right;
  let from = first;
  for (const box of boxes) {
    if (box.left > from && from < last) runs.push([from, Math.min(box.left, last)]);
    from = Math.max(from, box.right);
  }
  if (from < last) runs.push([from, last]);
  return runs.length > 0 ? runs : [[first, last]];
}
