import type { AllowingBlock, Origin, Side } from "../model/index.js";
import type { Box, SolvedLay, SolvedWall, Takeaway } from "../solver/index.js";
import { openingName } from "./words.js";

/** What cuts pieces off at their two sides in one direction: an opening, the wall's own side, or nothing. */
export type Cutter = Takeaway | "wall" | null;

/** The two sides of a direction. */
export type Direction = "across" | "up";

/** Where pieces are cut, in one direction. */
export interface CutPlace {
  readonly direction: Direction;
  /** At the left, or at the bottom. */
  readonly low: Cutter;
  /** At the right, or at the top. */
  readonly high: Cutter;
}

/**
 * What cuts the side of a piece that stands at `piece`: the opening whose side it lies on, else the
 * wall's own side.
 */
export function cutterAt(takeaways: readonly Takeaway[], piece: Box, side: Side): Cutter {
  return takeaways.find(({ box }) => liesOn(box, piece, side)) ?? "wall";
}

function liesOn(box: Box, piece: Box, side: Side): boolean {
  const beside = box.bottom < piece.top && piece.bottom < box.top;
  const above = box.left < piece.right && piece.left < box.right;
  switch (side) {
    case "left":
      return beside && box.right === piece.left;
    case "right":
      return beside && box.left === piece.right;
    case "bottom":
      return above && box.top === piece.bottom;
    case "top":
      return above && box.bottom === piece.top;
  }
}

/** A number for a cutter, to group by: 0 for nothing, 1 for the wall's side, then the openings. */
export function cutterKey(takeaways: readonly Takeaway[], cutter: Cutter): number {
  if (cutter === null) return 0;
  return cutter === "wall" ? 1 : 2 + takeaways.indexOf(cutter);
}

/** `at the left end`, `under window sash`, `between the left end and window sash`. */
export function placeName(place: CutPlace, lay: SolvedLay): string {
  const { low, high, direction } = place;
  const whose = (side: Side): string => (lay.inner.includes(side) ? ` of lay ${lay.lay.name}` : "");
  if (low !== null && high !== null) {
    return `between ${endName(low, direction, "low")} and ${endName(high, direction, "high")}`;
  }
  if (low === "wall") {
    return direction === "across"
      ? `at the left end${whose("left")}`
      : `along the bottom${whose("bottom")}`;
  }
  if (high === "wall") {
    return direction === "across"
      ? `at the right end${whose("right")}`
      : `along the top${whose("top")}`;
  }
  if (low) return `${direction === "across" ? "right of" : "over"} ${openingName(low.opening)}`;
  if (high) return `${direction === "across" ? "left of" : "under"} ${openingName(high.opening)}`;
  return "in the field";
}

function endName(cutter: Takeaway | "wall", direction: Direction, at: "low" | "high"): string {
  if (cutter !== "wall") return openingName(cutter.opening);
  if (direction === "across") return at === "low" ? "the left end" : "the right end";
  return at === "low" ? "the bottom" : "the top";
}

/** The statement that made a cut: the opening's, else the lay's. */
export function placeOrigin(place: CutPlace, { lay }: SolvedLay): Origin {
  return openingsOf(place)[0]?.origin ?? lay.origin;
}

/** The blocks that may allow a cut, innermost first. */
export function placeBlocks(
  place: CutPlace,
  { lay }: SolvedLay,
  { wall }: SolvedWall,
): AllowingBlock[] {
  return [...openingsOf(place), lay, lay.tile, wall];
}

function openingsOf({ low, high }: CutPlace) {
  const cutters = low === high ? [low] : [low, high];
  return cutters.flatMap((cutter) =>
    cutter === null || cutter === "wall" ? [] : [cutter.opening],
  );
}
