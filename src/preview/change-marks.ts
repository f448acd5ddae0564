/// <reference lib="dom" />
import { boundsOfPoints, type Points, type Scene } from "../drawing/index.js";
import type { PictureChanges } from "../service/index.js";
import { makeSvg } from "./elements.js";

/** What became of a marked piece. */
export const MARKED_FATES = ["recut", "fresh", "gone"] as const;

export type MarkedFate = (typeof MARKED_FATES)[number];

/** How much of the narrow side of a piece its sign takes. */
const SIGN = 0.55;

/**
 * Marks over a drawing, on pieces that changed. A piece that is cut differently has a heavy line round it, a
 * new one a plus as well, one that is gone is dotted and crossed out: no colour is needed to tell them.
 */
export class ChangeMarks {
  readonly element = makeSvg("g", { class: "changes" });
  readonly #walls = new Map<string, SVGGElement>();

  /** Marks what changed, or nothing; `place` puts it in its place. */
  show(changes: PictureChanges | null): void {
    this.#walls.clear();
    for (const marks of changes?.walls ?? []) {
      const paths = MARKED_FATES.flatMap((fate) => {
        const rings = marks[fate];
        if (rings.length === 0) return [];
        const d = rings.map(ringPath).join("") + rings.map((ring) => signPath(ring, fate)).join("");
        return [makeSvg("path", { class: `change-${fate}`, d })];
      });
      this.#walls.set(marks.wall, makeSvg("g", {}, ...paths));
    }
    this.element.replaceChildren(...this.#walls.values());
  }

  /** Walls move in the picture when another one changes its width. */
  place(scene: Scene | null): void {
    for (const [name, marks] of this.#walls) {
      const at = scene?.walls.find((wall) => wall.name === name)?.at;
      if (at) marks.setAttribute("transform", `translate(${at.x} ${at.y})`);
      marks.style.display = at ? "" : "none";
    }
  }
}

function ringPath(ring: Points): string {
  return `M${ring.join(" ")}Z`;
}

/** A plus or a cross in the middle of a piece; nothing for one that is only cut differently. */
function signPath(ring: Points, fate: MarkedFate): string {
  if (fate === "recut") return "";
  const { left, top, right, bottom } = boundsOfPoints(ring);
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  const half = (SIGN * Math.min(right - left, bottom - top)) / 2;
  if (fate === "fresh") return `M${x - half} ${y}h${2 * half}M${x} ${y - half}v${2 * half}`;
  return (
    `M${x - half} ${y - half}l${2 * half} ${2 * half}` +
    `M${x - half} ${y + half}l${2 * half} ${-2 * half}`
  );
}
