import type { Dom } from "@svgdotjs/svg.js";
import { rounded } from "../picture.js";
import type { PictureBox, Swatch, SwatchKind } from "../scene.js";
import { fillAndStroke, fillOf, strokeOf } from "../theme.js";
import { dashes } from "./draw-ground.js";
import { lineStyle } from "./draw-lines.js";
import { pieceStyle } from "./draw-pieces.js";
import { hatchFill } from "./patterns.js";
import { add, boxPath, linePath } from "./pen.js";

/** The legend's samples: each drawn as the thing itself is. */
export function drawSwatches(into: Dom, swatches: readonly Swatch[], em: number): void {
  for (const { kind, box } of swatches) drawSwatch(into, kind, box, em);
}

function drawSwatch(into: Dom, kind: SwatchKind, box: PictureBox, em: number): void {
  const d = boxPath(box);
  const outline = { ...strokeOf("hairline"), "stroke-width": 0.05 * em, d };
  const middle = rounded((box.top + box.bottom) / 2);
  switch (kind) {
    case "level":
    case "centre":
      add(into, "path", {
        ...lineStyle(kind, em),
        d: linePath([box.left, middle, box.right, middle]),
      });
      return;
    case "grout":
      add(into, "path", { ...fillOf("tile"), d });
      add(into, "path", { ...fillOf("grout"), d: boxPath(thin(box, 0.14 * em)) });
      add(into, "path", outline);
      return;
    case "soft":
      add(into, "path", { fill: hatchFill("soft"), d: boxPath(thin(box, 0.4 * em)) });
      return;
    case "hidden":
      add(into, "path", { ...fillOf("tile"), d });
      add(into, "path", { fill: hatchFill("hidden"), d });
      add(into, "path", { ...outline, "stroke-dasharray": dashes([0.35, 0.2], em) });
      return;
    case "build":
      add(into, "path", { fill: hatchFill("build"), d });
      return;
    case "trim":
      add(into, "path", { ...fillAndStroke("trim", "trim-line"), "stroke-width": 0.05 * em, d });
      return;
    default:
      add(into, "path", { ...pieceStyle(kind, em), d });
      if (kind !== "sliver") add(into, "path", outline);
  }
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
