import type { Dom } from "@svgdotjs/svg.js";
import { boundsOfPoints } from "../picture.js";
import { idPart } from "../plain-text.js";
import type { BandKind, PictureBox, WallScene } from "../scene.js";
import { fillOf, strokeOf } from "../theme.js";
import { dashes } from "./dashes.js";
import { drawHatched } from "./hatches.js";
import { add, linePath, ringPath } from "./pen.js";

/** The bare wall, the grout that shows between pieces, soft joints, the next wall's tile on end. */
export function drawGround(into: Dom, wall: WallScene, within: PictureBox, em: number): void {
  add(into, "path", { ...fillOf("substrate"), d: ringPath(wall.bare) });
  for (const kind of ["grout", "build", "soft"] as const) drawBands(into, wall, kind, within, em);
}

/** Bands of one kind. */
export function drawBands(
  into: Dom,
  wall: WallScene,
  kind: BandKind,
  within: PictureBox,
  em: number,
): void {
  const id = `gl-${idPart(wall.name)}-${kind}`;
  const shapes = wall.bands
    .filter((band) => band.kind === kind)
    .map(({ part, rings }) => ({
      id: `${id}-${idPart(part)}`,
      d: rings.map(ringPath).join(""),
    }));
  if (kind !== "grout") {
    const hatch = kind === "bead" ? "soft" : kind;
    drawHatched(into, { hatch, id, shapes, within }, em);
    return;
  }
  const group = add(into, "g", { id, "data-kind": kind, ...fillOf("grout") });
  for (const shape of shapes) add(group, "path", shape);
}

/** Strips behind another wall's tile: veiled, hatched, and ended by a dashed line. */
export function drawHidden(into: Dom, wall: WallScene, em: number): void {
  for (const { side, ring, limit } of wall.hidden) {
    const id = `gl-${idPart(wall.name)}-hidden-${side}`;
    const d = ringPath(ring);
    add(into, "path", { ...fillOf("paper"), "fill-opacity": 0.55, d });
    const shapes = [{ id: `${id}-strip`, d }];
    drawHatched(into, { hatch: "hidden", id, shapes, within: boundsOfPoints(ring) }, em);
    add(into, "path", {
      ...strokeOf("ink"),
      "stroke-width": 0.07 * em,
      "stroke-dasharray": dashes([0.35, 0.2], em),
      d: linePath(limit),
    });
  }
}
