import type { Dom } from "@svgdotjs/svg.js";
import { boxRing, rounded } from "../picture.js";
import type { PictureBox, Swatch, SwatchKind } from "../scene.js";
import { fillOf, strokeOf } from "../theme.js";
import { lineStyle } from "./draw-lines.js";
import { drawHatched, type HatchId } from "./hatches.js";
import { add, boxPath, linePath } from "./pen.js";

/** The legend's samples: each drawn as the thing itself is. */
export function drawSwatches(into: Dom, swatches: readonly Swatch[], em: number): void {
  for (const { kind, box } of swatches) drawSwatch(into, kind, box, em);
}

function drawSwatch(into: Dom, kind: SwatchKind, box: PictureBox, em: number): void {
  const d = boxPath(box);
  const id = `gl-legend-${kind}`;
  const hatched = (hatch: HatchId, within: PictureBox) => {
    const shapes = [{ id: `${id}-sample`, pieces: [[boxRing(within)]] }];
    drawHatched(into, { hatch, id, shapes }, em);
  };
  const outline = { ...strokeOf("hairline"), "stroke-width": 0.05 * em, d };
  const middle = rounded((box.top + box.bottom) / 2);
  switch (kind) {
    case "level":
    case "centre":
    case "set":
      add(into, "path", {
        ...lineStyle(kind, em),
        d: linePath([box.left, middle, box.right, middle]),
      });
      return;
    case "grout":
      add(into, "path", { ...fillOf("tile"), d });
      add(into, "path", { ...fillOf("grout"), d: boxPath(thin(box, 0.14 * em)) });
      break;
    case "soft":
      hatched(kind, thin(box, 0.4 * em));
      return;
    case "hidden":
      add(into, "path", { ...fillOf("tile"), d });
      hatched(kind, box);
      break;
    case "build":
      hatched(kind, box);
      break;
    case "trim":
      add(into, "path", { ...fillOf("trim"), d });
      break;
    case "whole":
      add(into, "path", { ...fillOf("tile"), d });
      break;
    default:
      hatched(kind, box);
      if (kind === "sliver") return;
  }
  add(into, "path", outline);
}

/** A level band through the middle of a box. */
function thin({ left, right, top, bottom }: PictureBox, height: number): PictureBox {
  const middle = (top + bottom) / 2;
  return {
    left,
    right,
    top: rounded(middle - height / 2),
    bottom: rounded(middle + height / 2),
  };
}
