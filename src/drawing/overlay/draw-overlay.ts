import type { Dom, Svg } from "@svgdotjs/svg.js";
import { idPart } from "../plain-text.js";
import { dashes } from "../svg/dashes.js";
import { drawBands, drawGround, drawHidden } from "../svg/draw-ground.js";
import { drawLabels } from "../svg/draw-labels.js";
import { drawLines } from "../svg/draw-lines.js";
import { drawHoles, drawOpenings, drawTrims } from "../svg/draw-openings.js";
import { drawSwatches } from "../svg/draw-swatches.js";
import { openPicture } from "../svg/draw.js";
import { drawHatched } from "../svg/hatches.js";
import { add, addText, ringPath } from "../svg/pen.js";
import type { Fate } from "../scene.js";
import { fillAndStroke, strokeOf } from "../theme.js";
import type { OverlayScene, OverlayWall } from "./overlay-scene.js";

/** Draws an overlay into an svg.js root, as `draw` does a scene. */
export function drawOverlay(scene: OverlayScene, into: Svg): void {
  openPicture(scene, into);
  for (const wall of scene.walls) drawWall(into, wall, scene.em);
  const notes = add(into, "g", { id: "gl-notes" });
  drawSwatches(notes, scene.swatches, scene.em);
  drawLabels(notes, scene.labels, scene.em);
}

function drawWall(into: Svg, wall: OverlayWall, em: number): void {
  const { base } = wall;
  const group = add(into, "g", {
    id: `gl-wall-${idPart(base.name)}`,
    "data-wall": base.name,
    transform: `translate(${base.at.x} ${base.at.y})`,
  });
  addText(group, "title", base.title);
  addText(group, "desc", base.description);
  drawGround(group, base, em);
  drawBands(group, base, "soft", em);
  drawKept(group, wall, em);
  for (const fate of ["moved", "recut", "fresh"] as const) drawFate(group, wall, fate, em);
  drawTrims(group, base, em);
  drawOpenings(group, base, em);
  drawHoles(group, base, em);
  drawHidden(group, base, em);
  drawFate(group, wall, "gone", em);
  drawWas(group, wall, em);
  drawLines(group, base, em);
  drawLabels(group, base.labels, em);
}

/** Kept pieces are quiet: their tile and the finest line. */
function drawKept(into: Dom, { base, groups }: OverlayWall, em: number): void {
  const kept = add(into, "g", {
    id: `gl-${idPart(base.name)}-kept`,
    "data-kind": "kept",
    "fill-rule": "evenodd",
    ...fillAndStroke("tile", "hairline"),
    "stroke-width": 0.03 * em,
  });
  for (const { fate, course, shapes } of groups) {
    if (fate !== null) continue;
    add(kept, "path", {
      id: `gl-${idPart(base.name)}-kept-${course}`,
      d: shapes.map((rings) => rings.map(ringPath).join("")).join(""),
    });
  }
}

function drawFate(into: Dom, { base, groups }: OverlayWall, fate: Fate, em: number): void {
  const id = `gl-${idPart(base.name)}-${fate}`;
  const own = groups.filter((group) => group.fate === fate);
  const shapes = own.map(({ course, shapes: pieces }) => ({ id: `${id}-${course}`, pieces }));
  drawHatched(into, { hatch: fate, id, shapes }, em);
  if (fate !== "gone" || own.length === 0) return;
  add(into, "path", {
    id: `${id}-outline`,
    ...strokeOf("error"),
    "stroke-width": 0.13 * em,
    "stroke-dasharray": dashes([0.45, 0.25], em),
    d: own.flatMap((group) => group.shapes.flatMap((rings) => rings.map(ringPath))).join(""),
  });
}

/** Dashed outlines of what stood elsewhere. */
function drawWas(into: Dom, { base, was }: OverlayWall, em: number): void {
  const id = `gl-${idPart(base.name)}-was`;
  const rings = [...(was.bare ? [was.bare] : []), ...was.openings];
  if (was.pieces.length > 0) {
    add(into, "path", {
      id: `${id}-pieces`,
      ...strokeOf("ink"),
      "stroke-width": 0.06 * em,
      "stroke-dasharray": dashes([0.28, 0.22], em),
      d: was.pieces.map(ringPath).join(""),
    });
  }
  if (rings.length > 0) {
    add(into, "path", {
      id: `${id}-outlines`,
      ...strokeOf("ink"),
      "stroke-width": 0.14 * em,
      "stroke-dasharray": dashes([0.8, 0.4], em),
      d: rings.map(ringPath).join(""),
    });
  }
  for (const { middle, radius } of was.holes) {
    add(into, "circle", {
      ...strokeOf("ink"),
      "stroke-width": 0.1 * em,
      "stroke-dasharray": dashes([0.4, 0.25], em),
      cx: middle.x,
      cy: middle.y,
      r: radius,
    });
  }
}
