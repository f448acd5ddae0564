import type { Label, LabelRole, PictureBox } from "./scene.js";
import { rounded } from "./picture.js";
import { textWidth } from "./text-metrics.js";

/** A text and where its middle line is. */
export interface LabelWish {
  readonly text: string;
  readonly role: LabelRole;
  readonly x: number;
  /** The middle of its height (of its width, when upward). */
  readonly y: number;
  readonly size: number;
  readonly anchor?: "start" | "middle" | "end";
  readonly bold?: boolean;
  readonly upward?: boolean;
}

/** From the middle of a capital to the line that it stands on, in its size. */
const BASELINE = 0.36;
/** Half of the height that letters with accents and tails can take, in their size. */
const HALF_LINE = 0.62;

/** From one line of text to the next: a little more than a line takes, for the rounding of places. */
export function lineHeight(size: number): number {
  return 2.04 * HALF_LINE * size;
}

export function makeLabel(wish: LabelWish): Label {
  const { text, role, size, anchor = "middle", bold = false, upward = false } = wish;
  const width = textWidth(text, size, bold ? "bold" : "regular");
  const before = anchor === "start" ? 0 : anchor === "end" ? width : width / 2;
  const half = HALF_LINE * size;
  const box = upward
    ? {
        left: wish.x - half,
        right: wish.x + half,
        top: wish.y - width + before,
        bottom: wish.y + before,
      }
    : {
        left: wish.x - before,
        right: wish.x - before + width,
        top: wish.y - half,
        bottom: wish.y + half,
      };
  return {
    text,
    role,
    x: rounded(upward ? wish.x + BASELINE * size : wish.x),
    y: rounded(upward ? wish.y : wish.y + BASELINE * size),
    anchor,
    size: rounded(size),
    bold,
    upward,
    box: roundedBox(box),
  };
}

/** The same label elsewhere. */
export function movedLabel(label: Label, dx: number, dy: number): Label {
  const { box } = label;
  return {
    ...label,
    x: rounded(label.x + dx),
    y: rounded(label.y + dy),
    box: roundedBox({
      left: box.left + dx,
      right: box.right + dx,
      top: box.top + dy,
      bottom: box.bottom + dy,
    }),
  };
}

export function boxesOverlap(a: PictureBox, b: PictureBox): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

export function boxWithin(inner: PictureBox, outer: PictureBox): boolean {
  return (
    inner.left >= outer.left &&
    inner.right <= outer.right &&
    inner.top >= outer.top &&
    inner.bottom <= outer.bottom
  );
}

/** The smallest box round these; null of none. */
export function boxRound(boxes: readonly PictureBox[]): PictureBox | null {
  if (boxes.length === 0) return null;
  let { left, top, right, bottom } = boxes[0]!;
  for (const box of boxes) {
    left = Math.min(left, box.left);
    top = Math.min(top, box.top);
    right = Math.max(right, box.right);
    bottom = Math.max(bottom, box.bottom);
  }
  return { left, top, right, bottom };
}

/**
 * Places along a line for things that each want to be at `wish` and take `size`: in the order of
 * their wishes, none over another, moved as little as can be (least squares, by pooling neighbours).
 */
export function spreadOut(wishes: readonly { wish: number; size: number }[]): number[] {
  const order = wishes.map((_, i) => i).sort((a, b) => wishes[a]!.wish - wishes[b]!.wish || a - b);
  const pools: { members: number[]; size: number; sum: number }[] = [];
  const startOf = (pool: { members: number[]; sum: number }) => pool.sum / pool.members.length;
  for (const i of order) {
    const { wish, size } = wishes[i]!;
    let pool = { members: [i], size, sum: wish - size / 2 };
    while (pools.length > 0) {
      const before = pools[pools.length - 1]!;
      if (startOf(before) + before.size <= startOf(pool)) break;
      pools.pop();
      pool = {
        members: [...before.members, ...pool.members],
        size: before.size + pool.size,
        sum: before.sum + pool.sum - before.size * pool.members.length,
      };
    }
    pools.push(pool);
  }
  const places = new Array<number>(wishes.length).fill(0);
  for (const pool of pools) {
    let at = startOf(pool);
    for (const i of pool.members) {
      places[i] = at + wishes[i]!.size / 2;
      at += wishes[i]!.size;
    }
  }
  return places;
}

function roundedBox(box: PictureBox): PictureBox {
  return {
    left: rounded(box.left),
    top: rounded(box.top),
    right: rounded(box.right),
    bottom: rounded(box.bottom),
  };
}
