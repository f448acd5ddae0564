/// <reference lib="dom" />
import type { Place } from "../drawing/index.js";

/** What a pointer does to the picture; places are the window's. */
export interface Gestures {
  readonly panBy: (dx: number, dy: number) => void;
  readonly zoomAt: (at: Place, factor: number) => void;
  /** The pointer rests or moves over the picture without a button down; null once it left. */
  readonly pointAt: (at: Place | null) => void;
  /** Pressed and let go at one place. */
  readonly tap: (at: Place) => void;
}

/** A press that moves further than this is a drag, in pixels. */
const SLOP = 4;
/** A wheel's notch is 100 or 120 pixels, a pinch sends a few at a time. */
const ZOOM_PER_PIXEL = 0.0022;
const PINCH_PER_PIXEL = 0.012;
/** Pixels to a line, for wheels that count in lines. */
const LINE = 20;

/**
 * Mouse: drag pans, the wheel scrolls, with Ctrl or Cmd it zooms. Trackpad: two fingers scroll, a
 * pinch zooms (it comes as a wheel with Ctrl). Touch and pen: one finger pans, two zoom.
 */
export function watchPointer(element: HTMLElement, gestures: Gestures): void {
  const down = new Map<number, Place>();
  let start: Place | null = null;
  let dragged = false;

  element.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    element.setPointerCapture(event.pointerId);
    down.set(event.pointerId, placeOf(event));
    dragged = down.size > 1;
    start = placeOf(event);
  });
  element.addEventListener("pointermove", (event) => {
    const at = placeOf(event);
    const before = down.get(event.pointerId);
    if (!before) {
      gestures.pointAt(at);
      return;
    }
    if (!dragged && start && Math.hypot(at.x - start.x, at.y - start.y) <= SLOP) return;
    if (!dragged) element.classList.add("dragged");
    dragged = true;
    down.set(event.pointerId, at);
    if (down.size === 1) gestures.panBy(at.x - before.x, at.y - before.y);
    else pinch(down, event.pointerId, before, gestures);
  });
  const release = (event: PointerEvent): void => {
    if (!down.delete(event.pointerId) || down.size > 0) return;
    element.classList.remove("dragged");
    if (!dragged && event.type === "pointerup") gestures.tap(placeOf(event));
  };
  element.addEventListener("pointerup", release);
  element.addEventListener("pointercancel", release);
  element.addEventListener("pointerleave", () => gestures.pointAt(null));
  element.addEventListener(
    "wheel",
    (event) => {
      event.preventDefault();
      roll(event, gestures);
    },
    { passive: false },
  );
}

/** Two fingers: zoomed by how their distance changes, about the middle between them, and moved with it. */
function pinch(
  down: ReadonlyMap<number, Place>,
  id: number,
  before: Place,
  { panBy, zoomAt }: Gestures,
): void {
  const after = down.get(id)!;
  const [, other] = [...down].find(([each]) => each !== id)!;
  const apart = (place: Place): number => Math.hypot(place.x - other.x, place.y - other.y);
  panBy((after.x - before.x) / 2, (after.y - before.y) / 2);
  if (apart(before) > 0 && apart(after) > 0) {
    const middle = { x: (after.x + other.x) / 2, y: (after.y + other.y) / 2 };
    zoomAt(middle, apart(after) / apart(before));
  }
}

function roll(event: WheelEvent, { panBy, zoomAt }: Gestures): void {
  const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE : 1;
  const [dx, dy] = [event.deltaX * unit, event.deltaY * unit];
  if (event.ctrlKey || event.metaKey) {
    const notch = Math.abs(dy) >= 50;
    zoomAt(placeOf(event), Math.exp(-dy * (notch ? ZOOM_PER_PIXEL : PINCH_PER_PIXEL)));
  } else if (event.shiftKey && dx === 0) panBy(-dy, 0);
  else panBy(-dx, -dy);
}

function placeOf({ clientX, clientY }: MouseEvent): Place {
  return { x: clientX, y: clientY };
}
