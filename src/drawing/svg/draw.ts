import type { Dom, Svg } from "@svgdotjs/svg.js";
import { idPart } from "../plain-text.js";
import { rounded } from "../picture.js";
import type { Scene, WallScene } from "../scene.js";
import { fillOf, FONTS, styleSheet } from "../theme.js";
import { drawBands, drawGround, drawHidden } from "./draw-ground.js";
import { drawBadges, drawLabels } from "./draw-labels.js";
import { drawDimensions, drawLines, drawMarks } from "./draw-lines.js";
import { drawHoles, drawOpenings, drawTrims } from "./draw-openings.js";
import { drawPieces } from "./draw-pieces.js";
import { drawSwatches } from "./draw-swatches.js";
import { add, addText, boxPath } from "./pen.js";

/**
 * Draws a scene into an svg.js root, in a page or without one; what the root held before is taken
 * out. Nothing is asked of the page: the same scene gives the same elements everywhere.
 */
export function draw(scene: Scene, into: Svg): void {
  openPicture(scene, into);
  for (const wall of scene.walls) drawWall(into, wall, scene.em);
  const notes = add(into, "g", { id: "gl-notes" });
  drawSwatches(notes, scene.swatches, scene.em);
  drawBadges(notes, scene.badges);
  drawLabels(notes, scene.labels, scene.em);
}

/** Empties the root and lays the paper: what every picture begins with. */
export function openPicture(scene: Pick<Scene, "title" | "description" | "view">, into: Svg): void {
  into.clear();
  const { left, top, right, bottom } = scene.view;
  const root = into.node;
  const view = [left, top, right - left, bottom - top].map(rounded).join(" ");
  root.setAttribute("viewBox", view);
  root.setAttribute("role", "img");
  root.setAttribute("aria-labelledby", "gl-title gl-desc");
  root.setAttribute("class", "gaugelath");
  root.setAttribute("font-family", FONTS);
  addText(into, "title", scene.title, { id: "gl-title" });
  addText(into, "desc", scene.description, { id: "gl-desc" });
  addText(into, "style", styleSheet());
  add(into, "path", { id: "gl-paper", ...fillOf("paper"), d: boxPath(scene.view) });
}

function drawWall(into: Svg, wall: WallScene, em: number): void {
  const group = add(into, "g", {
    id: `gl-wall-${idPart(wall.name)}`,
    "data-wall": wall.name,
    transform: `translate(${wall.at.x} ${wall.at.y})`,
  });
  addText(group, "title", wall.title);
  addText(group, "desc", wall.description);
  drawGround(group, wall, em);
  drawBands(layer(group, "soft"), wall, "soft", em);
  drawPieces(group, wall, em);
  drawTrims(group, wall, em);
  drawOpenings(group, wall, em);
  drawBands(layer(group, "soft"), wall, "bead", em);
  drawHoles(group, wall, em);
  drawHidden(layer(group, "hidden"), wall, em);
  drawLines(group, wall, em);
  drawDimensions(layer(group, "dimensions"), wall, em);
  drawMarks(group, wall, em);
  drawLabels(group, wall.labels, em);
  drawBadges(group, wall.badges);
}

/** What a host can show and hide by its own style sheet. */
function layer(into: Dom, name: "soft" | "hidden" | "dimensions"): Dom {
  return add(into, "g", { "data-layer": name });
}
