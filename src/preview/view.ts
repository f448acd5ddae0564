import {
  boundsOfPoints,
  type PictureBox,
  type Place,
  type Scene,
  type WallScene,
} from "../drawing/index.js";

/** The room that a picture is seen through, in CSS pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** How a picture is seen. */
export interface View {
  /** The place of the picture in the middle of the room, in picture millimetres. */
  readonly x: number;
  readonly y: number;
  /** Pixels to a millimetre. */
  readonly scale: number;
  /** `whole` and `width` follow the picture and the room until a person moves the view: then `free`. */
  readonly hold: "whole" | "width" | "free";
}

/** CSS defines the inch as 96 pixels (CSS Values and Units 4, 6.2). */
export const ACTUAL_SCALE = 96 / 25.4;

const LEAST_SCALE = 0.002;
const MOST_SCALE = 80;
/** Free room round a fitted box. */
const PADDING = 10;
/** Pixels that a box needs to be made out, and those that it is given if it has less. */
const LEAST_SEEN = 24;
const COMFORTABLE = 120;
/** A fitted picture is fitted again once it takes less than this share of what it could. */
const LOOSE = 0.8;

/** The whole box in the middle of the room. */
export function fitWhole(box: PictureBox, room: Size): View {
  const scale = Math.min(scaleAcross(box, room), scaleUp(box, room));
  return { ...middleOf(box), scale: bounded(scale), hold: "whole" };
}

/** The box as wide as the room, seen from its top, or at the height where `view` is now. */
export function fitWidth(box: PictureBox, room: Size, view?: View): View {
  const scale = bounded(scaleAcross(box, room));
  const half = room.height / 2 / scale;
  const pad = PADDING / scale;
  const [highest, lowest] = [box.top + half - pad, box.bottom - half + pad];
  const middle = middleOf(box);
  const y = highest > lowest ? middle.y : clamp(view?.y ?? highest, highest, lowest);
  return { x: middle.x, y, scale, hold: "width" };
}

/** One inch of wall takes one inch (of CSS). */
export function actualSize(view: View): View {
  return { ...view, scale: ACTUAL_SCALE, hold: "free" };
}

/** Moved by pixels: the picture goes along with the pointer. */
export function pannedBy(view: View, dx: number, dy: number): View {
  return { ...view, x: view.x - dx / view.scale, y: view.y - dy / view.scale, hold: "free" };
}

/** Zoomed by a factor about a place of the room (pixels from its upper left corner), which stays. */
export function zoomedAt(view: View, room: Size, at: Place, factor: number): View {
  const scale = bounded(view.scale * factor);
  const fixed = toPicture(view, room, at);
  return {
    x: fixed.x - (at.x - room.width / 2) / scale,
    y: fixed.y - (at.y - room.height / 2) / scale,
    scale,
    hold: "free",
  };
}

/** The picture's place at a place of the room. */
export function toPicture(view: View, room: Size, at: Place): Place {
  return {
    x: view.x + (at.x - room.width / 2) / view.scale,
    y: view.y + (at.y - room.height / 2) / view.scale,
  };
}

/** The part of the picture that is seen. */
export function seenBox(view: View, room: Size): PictureBox {
  const across = room.width / 2 / view.scale;
  const down = room.height / 2 / view.scale;
  return {
    left: view.x - across,
    right: view.x + across,
    top: view.y - down,
    bottom: view.y + down,
  };
}

/** The view with its middle inside the box, so that the picture can't be lost. */
export function keptOver(view: View, box: PictureBox): View {
  const x = clamp(view.x, box.left, box.right);
  const y = clamp(view.y, box.top, box.bottom);
  return x === view.x && y === view.y ? view : { ...view, x, y };
}

/** Moved as little as shows the box, zoomed out only where it is larger than the room. */
export function bringIn(view: View, box: PictureBox, room: Size): View {
  const { scale: largest } = fitWhole(box, room);
  if (largest < view.scale) return { ...fitWhole(box, room), hold: "free" };
  const pad = PADDING / view.scale;
  const seen = seenBox(view, room);
  const x = view.x + intoRange(box.left - pad, box.right + pad, seen.left, seen.right);
  const y = view.y + intoRange(box.top - pad, box.bottom + pad, seen.top, seen.bottom);
  return x === view.x && y === view.y ? view : { ...view, x, y, hold: "free" };
}

/** The same, and zoomed in where the box would be hard to make out. */
export function bringNear(view: View, box: PictureBox, room: Size): View {
  const side = Math.max(box.right - box.left, box.bottom - box.top);
  if (side * view.scale >= LEAST_SEEN) return bringIn(view, box, room);
  const scale = bounded(COMFORTABLE / side);
  return bringIn({ ...middleOf(box), scale, hold: "free" }, box, room);
}

/**
 * The view after the picture or the room changed. A free one keeps zoom and place. A fitted one does
 * too while its box is still seen whole and not small: typing should not make the picture breathe.
 */
export function settled(view: View, box: PictureBox, room: Size): View {
  if (view.hold === "free") return view;
  if (view.hold === "width") {
    const best = fitWidth(box, room, view);
    return isClose(view.scale, best.scale) && isClose(view.x, best.x) ? view : best;
  }
  const best = fitWhole(box, room);
  const seen = seenBox(view, room);
  const whole =
    box.left >= seen.left &&
    box.right <= seen.right &&
    box.top >= seen.top &&
    box.bottom <= seen.bottom;
  return whole && view.scale >= LOOSE * best.scale ? view : best;
}

/**
 * The view that shows the same place of the same wall in another picture of the plan: walls move in
 * the picture when another one changes its width, or its notes their height.
 */
export function carriedOver(view: View, from: Scene, to: Scene): View {
  const before = nearestWall(from.walls, view);
  const after = before && to.walls.find((wall) => wall.name === before.name);
  if (!before || !after) return view;
  return {
    ...view,
    x: view.x + (after.at.x - before.at.x),
    y: view.y + (after.at.y - before.at.y),
  };
}

/** The wall that a place of the picture is in, or the nearest one. */
export function nearestWall(walls: readonly WallScene[], { x, y }: Place): WallScene | null {
  let nearest: WallScene | null = null;
  let least = Infinity;
  for (const wall of walls) {
    const { left, top, right, bottom } = boundsOfPoints(wall.bare);
    const dx = Math.max(wall.at.x + left - x, x - (wall.at.x + right), 0);
    const dy = Math.max(wall.at.y + top - y, y - (wall.at.y + bottom), 0);
    const away = Math.hypot(dx, dy);
    if (away < least) [nearest, least] = [wall, away];
  }
  return nearest;
}

function scaleAcross(box: PictureBox, room: Size): number {
  return Math.max(room.width - 2 * PADDING, 1) / Math.max(box.right - box.left, 1);
}

function scaleUp(box: PictureBox, room: Size): number {
  return Math.max(room.height - 2 * PADDING, 1) / Math.max(box.bottom - box.top, 1);
}

function middleOf({ left, right, top, bottom }: PictureBox): Place {
  return { x: (left + right) / 2, y: (top + bottom) / 2 };
}

/** How far to move a window `low..high` so that it holds `from..to`. */
function intoRange(from: number, to: number, low: number, high: number): number {
  if (from < low) return from - low;
  return to > high ? to - high : 0;
}

function isClose(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(a));
}

function bounded(scale: number): number {
  return clamp(scale, LEAST_SCALE, MOST_SCALE);
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
