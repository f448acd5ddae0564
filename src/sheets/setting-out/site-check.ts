import type { Nm } from "../../measure/index.js";
import type { Opening, Side } from "../../model/index.js";
import type { Slack, Trouble } from "./slack.js";

/** A dimension to measure on the site before anything is cut. */
export interface SiteCheck {
  readonly wall: string;
  readonly measure: SiteMeasure;
  /** What the plan reckons with. */
  readonly planned: Nm;
  /** Stop and ask where less, or more, is measured than this; null where that does no harm. */
  readonly least: Stop | null;
  readonly most: Stop | null;
}

export interface Stop {
  readonly at: Nm;
  readonly then: Trouble;
}

export type SiteMeasure =
  /** From a plumb line to the end of the bare wall, or from the level line to its bottom or top. */
  | { readonly kind: "side"; readonly side: Side; readonly at: Nm | null }
  /** From end to end, where a wall is too narrow for plumb lines. */
  | { readonly kind: "width"; readonly at: Nm }
  /** From a plumb line, or from the level line, to that side of the rough opening. */
  | { readonly kind: "opening"; readonly opening: Opening; readonly side: Side }
  /** The other wall's tile and bed together, where they cover this wall's end. */
  | { readonly kind: "build"; readonly side: "left" | "right"; readonly other: string }
  /** So many tiles with as many joints, laid dry along a lath. */
  | { readonly kind: "run"; readonly direction: "across" | "up"; readonly count: number };

/** Something that stands at a coordinate, and on which side of it the tile lies that it cuts. */
export interface Border {
  readonly at: Nm;
  /** 1 where the tile lies to the right of it or over it, -1 where to its left or under it. */
  readonly tile: 1 | -1;
}

/** How far a border may be from a line that is struck on the wall, before it does harm. */
export function stopsFrom(
  line: Nm,
  { at, tile }: Border,
  { shrink, grow }: Slack,
): Pick<SiteCheck, "planned" | "least" | "most"> {
  const shrunk = shrink && stopAt(line, at, at + tile * shrink.by, shrink.then);
  const grown = grow && stopAt(line, at, at - tile * grow.by, grow.then);
  // A border between the line and the tile that it cuts shrinks the tile where it moves away.
  const [least, most] = (at - line) * tile > 0 ? [grown, shrunk] : [shrunk, grown];
  return { planned: Math.abs(at - line), least, most };
}

/** A border that would pass the line by then is measured no more. */
function stopAt(line: Nm, from: Nm, to: Nm, then: Trouble): Stop | null {
  if (Math.sign(from - line) * Math.sign(to - line) < 0) return null;
  return { at: Math.abs(to - line), then };
}
